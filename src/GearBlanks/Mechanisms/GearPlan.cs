using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>A gear whose defaults are filled in, but whose thinning still waits for its meshes.</summary>
internal sealed record GearPlan(
    JobGear Job, JobDefaults Defaults, string Sandwich, Axis Axis, double Module, double Thickness, BasicRack Rack, Material? Material, double? Bottom)
{
    public string Name => Job.Name;

    public Place Place => Job.Place;

    /// <summary>Where it stands as a rack; null for a gear.</summary>
    public RackPlace? RackPlace => Job.RackBar is null ? null : new RackPlace(Axis.Position, Job.Turned);

    /// <summary>Thinning that the job gives, mm; null where the meshes decide.</summary>
    public double? GivenThinning => Job.Thinning ?? Defaults.Thinning;

    // A tooth that is named is marked whatever the defaults say.
    private ImmutableArray<int> MarkedTeeth => Job.MarkTeeth ?? (Job.Mark ?? Defaults.Mark ?? true ? [1] : []);

    public ToothData Data(double thinning) => Plain(thinning) with { Tip = Job.Tip };

    /// <summary>What is cut through its face.</summary>
    public CutoutsPlan CutoutsPlan => new(Job, Defaults);

    /// <exception cref="GearGeometryException">A cutout reaches the teeth or another cutout.</exception>
    public MountedGear Mount(Toothing gear, Cutouts cutouts)
    {
        var blank = new Blank(Name, gear, Thickness, cutouts, MarkedTeeth)
        {
            IsDisc = Job.IsDisc,
            Lettering = Job.Lettering ?? Defaults.Lettering ?? true ? Words() : "",
            PartNumber = Job.PartNumber,
        };
        return new MountedGear(blank, Material, Sandwich, Axis, Job.Turned, Bottom);
    }

    private ToothData Plain(double thinning) =>
        Job.RackBar is { } bar ? new RackBarData(Module, Rack, bar.Length, bar.BackHeight, Job.ProfileShift, thinning)
        : Job.Ring is { } ring
            ? new RingData(Job.Teeth, Module, Rack, ring.RimDiameter, ring.RootFilletRadius, Job.ProfileShift, thinning, Job.TipDiameter)
            : new GearData(Job.Teeth, Module, Rack, Job.ProfileShift, thinning, Job.TipDiameter);

    private string Words() => string.Create(
        CultureInfo.InvariantCulture,
        $"{(Job.PartNumber is { } number ? number + LetteringLayout.Break : "")}{Name}{LetteringLayout.Break}{(Job.RackBar is null ? $"z {Job.Teeth} " : "")}m {Module:0.####}{LetteringLayout.Break}x {Job.ProfileShift:+0.###;-0.###;0} α {Rack.PressureAngle * 180 / Math.PI:0.##}°");
}
