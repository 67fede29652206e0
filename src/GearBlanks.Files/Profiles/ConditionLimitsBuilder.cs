using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Profiles;

/// <summary>Makes the limits for conditions. A profile that was written before there were any takes those built in.</summary>
internal static class ConditionLimitsBuilder
{
    private static readonly Lazy<Entries> BuiltIn = new(() =>
    {
        var problems = new ProblemList();
        var (text, file) = new ProfileStore(null).Read(ProfileKind.Limits, DefaultNames.Limits, problems);
        return new KeyReader(problems).Read(TomlSource.Read(text!, file, problems)!, ProfileKeys.Limits);
    });

    public static ConditionLimits Of(Entries file) => new()
    {
        BacklashLeast = Limit(file, "backlash-least"),
        BacklashGreatest = Limit(file, "backlash-greatest"),
        FilletClearanceLeast = Limit(file, "fillet-clearance-least"),
        BindingShare = Limit(file, "binding-share"),
        RattlingShare = Limit(file, "rattling-share"),
        ApproachShare = Limit(file, "approach-share"),
    };

    private static Limit Limit(Entries file, string key) => ProfileBuilder.Limit(file.Table(key) is null ? BuiltIn.Value : file, key);
}
