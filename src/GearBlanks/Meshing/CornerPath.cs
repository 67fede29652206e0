namespace GearBlanks.Meshing;

/// <summary>
/// A place of the mate's tip corner while the two flanks that belong together touch: in a frame in which a side's owner has turned by
/// <see cref="Turn"/> since they touched at the pitch point.
/// </summary>
/// <param name="X">Towards the pitch point from the owner's centre, mm; of a rack along it.</param>
/// <param name="Y">Across, mm; of a rack the height over its reference line.</param>
/// <param name="Turn">How far the owner has turned, rad, counter-clockwise; 0 for a rack.</param>
internal readonly record struct Corner(double X, double Y, double Turn)
{
    public double Radius => Math.Sqrt((X * X) + (Y * Y));
}

/// <summary>The way of the mate's tip corner past a gear or rack, its parameter 0 where the corner crosses the line of centres.</summary>
internal abstract class CornerPath
{
    /// <summary>Where the corner is.</summary>
    public abstract Corner At(double parameter);

    /// <summary>
    /// How fast the corner moves against what it passes, mm for each unit of the parameter: its distance from the pitch point, about which the two turn, times their
    /// turn against one another.
    /// </summary>
    public abstract double RateAt(double parameter);

    /// <summary>The parameter at which the corner passes a radius of the gear (a height of the rack), mm, and deeper before; NaN where it does not.</summary>
    public abstract double Reach(double limit);
}
