using System.Collections.Immutable;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>What kind of teeth a command line asks for: an external gear's where nothing is given.</summary>
/// <param name="IsRing">True for a ring gear.</param>
/// <param name="RimDiameter">Outer diameter of a ring's rim, mm.</param>
/// <param name="RootFillet">Radius of the round between a ring's flank and root circle, mm; null for the rack's.</param>
/// <param name="RackLength">Length of a straight rack, mm; null for a gear.</param>
/// <param name="BackHeight">Distance of a rack's back from its reference line, mm.</param>
public sealed record ToothShape(bool IsRing, double? RimDiameter, double? RootFillet, double? RackLength, double? BackHeight)
{
    /// <summary>An external gear.</summary>
    public static ToothShape External { get; } = new(false, null, null, null, null);

    internal ImmutableArray<Problem> ProblemsWith(GearRequest request)
    {
        (bool Given, string Option)[] ofRacks = [(BackHeight is not null, "--back-height")];
        (bool Given, string Option)[] ofRings = [(RimDiameter is not null, "--rim-diameter"), (RootFillet is not null, "--root-fillet")];
        (bool Given, string Option)[] notOfRacks =
            [(request.Teeth is not null, "--teeth"), (IsRing, "--ring"), (request.TipDiameter is not null, "--tip-diameter"), (request.Bore is not null, "--bore"), .. ofRings];
        bool isRack = RackLength is not null;
        return
        [
            .. Refused(isRack ? notOfRacks : [], "A straight rack does not take this option", "--rack-length and --back-height without it"),
            .. Refused(isRack ? [] : ofRacks, "Only a rack has a back", "this option together with --rack-length"),
            .. Refused(IsRing || isRack ? [] : ofRings, "Only a ring has this", "this option together with --ring"),
            .. Refused([(IsRing && request.Bore is not null, "--bore")], "A ring's middle is open: it has no bore", "a ring without --bore"),
            .. Missing(isRack && BackHeight is null, "--back-height", "A rack needs the distance of its back from the reference line", "a length over the dedendum, such as 3 modules"),
            .. Missing(IsRing && !isRack && RimDiameter is null, "--rim-diameter", "A ring needs the outer diameter of its rim", "a length over the root diameter"),
            .. Missing(!isRack && request.Teeth is null, "--teeth", "It is missing", "--teeth Z for a gear or a ring, --rack-length L for a rack"),
        ];
    }

    /// <exception cref="GearGeometryException">No such teeth exist.</exception>
    internal Toothing Make(GearRequest request, RackChoice choice) => Toothing.Of(DataOf(request, choice) with { Tip = request.Tip });

    private ToothData DataOf(GearRequest request, RackChoice choice) =>
        RackLength is { } length ? new RackBarData(choice.Module, choice.Rack, length, BackHeight!.Value, request.ProfileShift, request.Thinning)
        : IsRing ? new RingData(request.Teeth!.Value, choice.Module, choice.Rack, RimDiameter!.Value, RootFillet, request.ProfileShift, request.Thinning, request.TipDiameter)
        : new GearData(request.Teeth!.Value, choice.Module, choice.Rack, request.ProfileShift, request.Thinning, request.TipDiameter);

    private static IEnumerable<Problem> Refused((bool Given, string Option)[] options, string message, string allowed) =>
        options.Where(option => option.Given).SelectMany(option => CommandLine.Problem(option.Option, null, message, allowed));

    private static ImmutableArray<Problem> Missing(bool isMissing, string option, string message, string allowed) =>
        isMissing ? CommandLine.Problem(option, null, message, allowed) : [];
}
