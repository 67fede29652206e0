namespace GearBlanks.Cutting.Routes;

/// <summary>Where a tab may be: its middle and what room it has to both sides, as lengths along the contour.</summary>
/// <param name="Middle">Its middle, mm.</param>
/// <param name="Room">Half of the longest stretch that may stay, mm.</param>
internal readonly record struct TabPlace(double Middle, double Room);

/// <summary>A stretch of a contour that the tool leaves out, as lengths along it.</summary>
/// <param name="From">Where it begins, mm.</param>
/// <param name="To">Where it ends, mm.</param>
/// <param name="Width">How wide what stays uncut is where it is narrowest, mm.</param>
internal readonly record struct Tab(double From, double To, double Width)
{
    // Of a land: a tab as wide as its land would leave nothing to cut.
    private const double Shrink = 0.02;

    private const int Halvings = 50;

    /// <summary>Its width to a micrometre, in mm, never more than it is.</summary>
    public double ToldWidth => Math.Floor((Width * 1000) + Rounding) / 1000;

    // In micrometres.
    private const double Rounding = 1e-3;

    /// <summary>The tab in a place: as wide as asked for, else as wide as there is room.</summary>
    /// <param name="loop">The contour.</param>
    /// <param name="place">The place.</param>
    /// <param name="asked">The width asked for, mm.</param>
    /// <param name="tool">Diameter of the tool, mm; 0 where it is not known.</param>
    public static Tab In(Loop loop, TabPlace place, double asked, double tool)
    {
        double most = place.Room * (1 - Shrink);
        double half = Uncut(most) <= asked ? most : tool == 0 ? asked / 2 : Stretch();
        return new Tab(place.Middle - half, place.Middle + half, Uncut(half));

        // A tool's circle takes its radius at both ends, whatever way round a corner its centre went.
        double Uncut(double side) => tool == 0 ? 2 * side : loop.PointAt(place.Middle - side).DistanceTo(loop.PointAt(place.Middle + side)) - tool;

        double Stretch()
        {
            (double less, double more) = (0, most);
            for (int i = 0; i < Halvings; i++)
            {
                double middle = (less + more) / 2;
                (less, more) = Uncut(middle) < asked ? (middle, more) : (less, middle);
            }

            return less;
        }
    }
}
