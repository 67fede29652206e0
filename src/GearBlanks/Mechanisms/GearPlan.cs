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

    public ToothData Data(double thinning) =>
        Job.RackBar is { } bar ? new RackBarData(Module, Rack, bar.Length, bar.BackHeight, Job.ProfileShift, thinning)
        : Job.Ring is { } ring
            ? new RingData(Job.Teeth, Module, Rack, ring.RimDiameter, ring.RootFilletRadius, Job.ProfileShift, thinning, Job.TipDiameter)
            : new GearData(Job.Teeth, Module, Rack, Job.ProfileShift, thinning, Job.TipDiameter);

    // A ring's middle is open, and a bar has none.
    private bool HasBore => Job.Ring is null && Job.RackBar is null;

    /// <exception cref="GearGeometryException">The gear cannot exist.</exception>
    public MountedGear Mount(double thinning)
    {
        var blank = new Blank(
            Name,
            (ExternalGear)Toothing.Of(Data(thinning)),
            Thickness,
            HasBore && (Job.Bore ?? Defaults.Bore) is > 0 and var bore ? bore : null,
            Job.Screws is { } screws
                ? new ScrewCircle(screws.Count, screws.CircleDiameter, screws.HoleDiameter, screws.HeadDiameter, screws.StartAngle)
                : null,
            Job.Holes,
            Job.IsDisc,
            Job.Mark ?? Defaults.Mark ?? true,
            Job.Lettering ?? Defaults.Lettering ?? true ? Words() : "");
        return new MountedGear(blank, Material, Sandwich, Axis, Job.Turned, Bottom);
    }

    private string Words() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Name}{LetteringLayout.Break}z {Job.Teeth} m {Module:0.####}{LetteringLayout.Break}x {Job.ProfileShift:+0.###;-0.###;0} α {Rack.PressureAngle * 180 / Math.PI:0.##}°");
}
