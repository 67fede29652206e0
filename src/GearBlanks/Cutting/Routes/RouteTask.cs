using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Routes;

/// <summary>One part whose contours are routed, and what became of the plan.</summary>
/// <param name="Teeth">The part's teeth.</param>
/// <param name="Plan">What is asked for.</param>
/// <param name="Centre">Diameter of the beam or tool whose centre runs on the contours, mm; 0 where they are the part itself.</param>
/// <param name="Margin">What leads keep from contours, mm.</param>
/// <param name="Contours">Every contour of the part.</param>
internal sealed record RouteTask(Toothing Teeth, RoutePlan Plan, double Centre, double Margin, IReadOnlyCollection<Curve> Contours)
{
    /// <summary>Diameter of what takes its half at both ends of a tab, mm: of the tool, whether its centre runs on the contour or is moved off it later; 0 where it is not known.</summary>
    public double AtTabs { get; init; }

    /// <summary>What there was no room for, a sentence an item.</summary>
    public List<string> Remarks { get; } = [];

    /// <summary>Lengths of the leads, mm.</summary>
    public List<double> Leads { get; } = [];

    /// <summary>Widths of the tabs, mm.</summary>
    public List<double> Tabs { get; } = [];

    /// <summary>What became of the plan, in words.</summary>
    public string Words => Plan.InWords(Leads, Tabs);
}
