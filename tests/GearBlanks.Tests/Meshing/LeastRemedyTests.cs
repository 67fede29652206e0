using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>The least change that a finding names is made as a person would make it: it mends, and worsens nothing.</summary>
public sealed partial class LeastRemedyTests
{
    private const string Start = "Least that mends it and worsens nothing else in this mesh: ";
    private const double Wanted = 0.04;

    [Fact]
    public void Changes_of_random_pairs_mend_and_worsen_nothing()
    {
        int followed = 0;
        Gen.OneOf(Bad(RandomPairs.Any), Bad(RandomPairs.LongTipped), Bad(RandomOtherPairs.Rings), Bad(RandomOtherPairs.Bars)).Sample(
            pair =>
            {
                Finding[] before = [.. All(pair)];
                foreach (Finding finding in before.Where(finding => finding.Level != Level.Ok && finding.Place == "mesh"))
                {
                    foreach (string change in Changes(finding.Advice!))
                    {
                        Finding[] after = [.. All(Made(pair, change))];
                        foreach (Finding one in after.Where(one => one.Level != Level.Ok))
                        {
                            Assert.True(Subject(one) != Subject(finding), $"{change} does not mend {finding.Message}: {one.Message}");
                            Assert.True(
                                before.Any(other => Subject(other) == Subject(one) && other.Level >= one.Level),
                                $"{change}, told for {finding.Message}, worsens: {one.Message}");
                        }

                        Interlocked.Increment(ref followed);
                    }
                }
            },
            iter: 300);
        Assert.True(followed > 200, $"{followed} changes");
    }

    /// <summary>Half the least change is not enough, so it is the least.</summary>
    [Theory]
    [InlineData(29.97)]
    [InlineData(30.01)]
    [InlineData(30.4)]
    public void The_change_is_the_least(double distance)
    {
        var gear = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        var wheel = ExternalGear.Create(new GearData(40, 1, TestRacks.A));
        Finding finding = All(GearPair.At(gear, wheel, distance)).First(one => one.Name == "backlash");
        string change = Changes(finding.Advice!).First(one => one.Contains("centre distance", StringComparison.Ordinal));
        double by = Distance().Match(change) is { Success: true } match ? Number(match) : throw new InvalidOperationException(change);
        double sign = change.StartsWith("open", StringComparison.Ordinal) ? 1 : -1;
        Assert.Equal(Level.Ok, All(GearPair.At(gear, wheel, distance + (sign * by))).First(one => one.Name == "backlash").Level);
        Assert.NotEqual(Level.Ok, All(GearPair.At(gear, wheel, distance + (sign * (by - 0.0011)))).First(one => one.Name == "backlash").Level);
    }

    [Fact]
    public void Where_nothing_mends_it_is_said()
    {
        var small = ExternalGear.Create(new GearData(8, 1, TestRacks.A, TipDiameter: 8.6));
        Finding finding = All(GearPair.At(small, small, 8.05)).First(one => one.Name == "contact-ratio");
        Assert.Equal(Level.Fails, finding.Level);
        Assert.EndsWith("No single change of distance, profile shift or tip mends it without worsening another check of this mesh.", finding.Advice, StringComparison.Ordinal);
    }

    private static Gen<GearPair> Bad<TPair>(Gen<TPair> pairs)
        where TPair : GearPair => Gen.Select(pairs, Gen.Double[-0.06, 0.12]).Select((pair, by) => Near(pair, by));

    private static GearPair Near(GearPair pair, double by)
    {
        try
        {
            return GearPair.At(pair.First, pair.Second, pair.CentreDistance + (by * pair.First.Module));
        }
        catch (GearGeometryException)
        {
            return pair;
        }
    }

    private static IEnumerable<Finding> All(GearPair pair) => PairCheck.Of(pair, "a", "b", "mesh", TestLimits.Common, Wanted * pair.First.Module)
        .Concat(ToothCheck.Of(pair.First, "a", TestLimits.Common)).Concat(ToothCheck.Of(pair.Second, "b", TestLimits.Common));

    private static string Subject(Finding finding) => finding.Name is "pointed-tip" or "tip-thickness"
        ? "tip " + finding.Place
        : finding.Name + finding.Place + (finding.Message.Split(" is ")[0] is { } what && finding.Name.EndsWith("clearance", StringComparison.Ordinal) ? what : "");

    private static string[] Changes(string advice) =>
        advice.IndexOf(Start, StringComparison.Ordinal) is >= 0 and int at ? advice[(at + Start.Length)..].TrimEnd('.').Split("; or ") : [];

    private static GearPair Made(GearPair pair, string change)
    {
        (ToothData first, ToothData second, double distance) = (pair.First.Data, pair.Second.Data, pair.CentreDistance);
        if (Distance().Match(change) is { Success: true } moved)
        {
            distance += (moved.Groups[1].Value is "open" or "raise" ? 1 : -1) * Number(moved);
        }
        else if (Shift().Match(change) is { Success: true } shift)
        {
            (first, second) = OfOne(shift.Groups[1].Value, data => data with { ProfileShift = data.ProfileShift + Number(shift) });
        }
        else
        {
            Match tip = Tip().Match(change);
            Assert.True(tip.Success, change);
            (first, second) = OfOne(tip.Groups[1].Value, data => data is RackBarData rack ? rack with { TipHeight = Number(tip) } : (GearData)data with { TipDiameter = Number(tip) });
        }

        return GearPair.At(Toothing.Of(first), Toothing.Of(second), distance);

        (ToothData, ToothData) OfOne(string name, Func<ToothData, ToothData> changed) => name == "a" ? (changed(first), second) : (first, changed(second));
    }

    private static double Number(Match match) => double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(open|close|raise|lower) the (?:centre distance|gear) by ([0-9.]+) mm$")]
    private static partial Regex Distance();

    [GeneratedRegex("^shift (a|b) by ([-+][0-9.]+)$")]
    private static partial Regex Shift();

    [GeneratedRegex("^(?:raise|lower) the tip (?:diameter|height) of (a|b) to ([-0-9.]+) mm$")]
    private static partial Regex Tip();
}
