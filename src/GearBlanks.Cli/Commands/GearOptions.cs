using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Teeth;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Commands;

/// <summary>The options that describe one gear, ring or rack.</summary>
internal sealed class GearOptions
{
    private readonly OneWord<int> _teeth = new("--teeth", "Z", "Tooth count, 4 to 1000; a rack takes none.", WordReaders.WholeNumber(GearRanges.LeastTeeth, GearRanges.MostTeeth));
    private readonly Option<bool> _ring = new("--ring") { Description = "A ring gear: its teeth point inward.", Arity = ArgumentArity.Zero };
    private readonly OneWord<double?> _rim = new("--rim-diameter", "D", "Outer diameter of a ring's rim, mm.", WordReaders.Length(SharedOptions.Size));
    private readonly OneWord<double?> _fillet = new(
        "--root-fillet", "R", "Radius of the round between a ring's flank and root circle, mm. [default: the rack's]", WordReaders.Length(SharedOptions.SizeOrNone));

    private readonly OneWord<double?> _length = new("--rack-length", "L", "A straight rack of this length, mm.", WordReaders.Length(SharedOptions.Size));
    private readonly OneWord<double?> _back = new("--back-height", "H", "Distance of a rack's back from its reference line, mm.", WordReaders.Length(SharedOptions.Size));
    private readonly OneWord<double?> _shift = new("--profile-shift", "X", "Profile shift coefficient, -1 to 1.5. [default: 0]", WordReaders.Number(SharedOptions.Shift));
    private readonly OneWord<double?> _tip = new("--tip-diameter", "D", "Tip diameter, mm. [default: the rack's]", WordReaders.Length(SharedOptions.Size));
    private readonly OneWord<double?> _tipRound = new("--tip-round", "R", "Radius of the round at the tip's corners, mm. [default: sharp]", WordReaders.Length(SharedOptions.SizeOrNone));
    private readonly OneWord<double?> _tipChamfer = new(
        "--tip-chamfer", "MM", "Height of the chamfer at the tip's corners, along the radius, mm. [default: none]", WordReaders.Length(SharedOptions.SizeOrNone));

    private readonly OneWord<double?> _thinning = new(
        "--thinning", "MM", "Loss of tooth thickness (arc) on the reference circle. [default: 0]", WordReaders.Length(SharedOptions.Thinning));

    private readonly OneWord<double?> _bore = new("--bore", "D", "Bore diameter, mm. [default: none]", WordReaders.Length(SharedOptions.Size));

    private Option[] All =>
        [SharedOptions.Module, SharedOptions.DiametralPitch, _teeth, _ring, _rim, _fillet, _length, _back, SharedOptions.PressureAngle, _shift, SharedOptions.Rack, _tip, _tipRound, _tipChamfer, _thinning, _bore];

    /// <summary>Adds all of them to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (Option option in All)
        {
            command.Options.Add(option);
        }
    }

    /// <summary>True where any of them is given.</summary>
    public bool AnyIn(ParseResult parsed) => All.Any(option => parsed.GetResult(option) is { Implicit: false });

    /// <summary>The gear that they describe.</summary>
    public GearRequest Request(ParseResult parsed, string file) => new(
        SharedOptions.GearNumbers(parsed),
        new ToothShape(parsed.GetValue(_ring), parsed.GetValue(_rim), parsed.GetValue(_fillet), parsed.GetValue(_length), parsed.GetValue(_back)),
        parsed.GetResult(_teeth) is null ? null : parsed.GetValue(_teeth), parsed.GetValue(_shift) ?? 0, parsed.GetValue(_tip),
        parsed.GetValue(_thinning) ?? 0, parsed.GetValue(_bore), SharedOptions.Output(parsed), file,
        parsed.GetValue(SharedOptions.Kerf))
    {
        Tip = (parsed.GetValue(_tipRound) ?? 0, parsed.GetValue(_tipChamfer) ?? 0) is var (round, chamfer) && round + chamfer > 0 ? new TipForm(round, chamfer) : null,
    };
}
