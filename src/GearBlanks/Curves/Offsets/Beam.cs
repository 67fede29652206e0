using MathNet.Numerics.Integration;

namespace GearBlanks.Curves.Offsets;

/// <summary>
/// The spot with which a beam cuts: an ellipse with its axes along X and Y, a disc where both are equal. Normals have length 1.
/// </summary>
/// <remarks>An ellipse's support: the point of its edge with outward normal n is (a^2 nx, b^2 ny) / sqrt(a^2 nx^2 + b^2 ny^2).</remarks>
/// <param name="SemiX">Half its width along X, mm; positive.</param>
/// <param name="SemiY">Half its width along Y, mm; positive.</param>
internal readonly record struct Beam(double SemiX, double SemiY)
{
    // Nodes and panels with which the edge's length comes out to the last bits for the widths a kerf may have.
    private const int Nodes = 10;
    private const double Panel = Math.PI / 16;

    public bool IsRound => SemiX == SemiY;

    public double Greatest => Math.Max(SemiX, SemiY);

    public double Least => Math.Min(SemiX, SemiY);

    /// <summary>From the centre to the edge's point with an outward normal.</summary>
    public Vector EdgeAt(Vector normal) =>
        IsRound ? normal * SemiX : new Vector(SemiX * SemiX * normal.X, SemiY * SemiY * normal.Y) * (1 / Support(normal));

    /// <summary>Radius of curvature of the edge's point with an outward normal, mm.</summary>
    public double RadiusAt(Vector normal) => IsRound ? SemiX : Math.Pow(SemiX * SemiY, 2) / Math.Pow(Support(normal), 3);

    /// <summary>Length of the edge between two directions of its normal, rad; negative where the second is the smaller.</summary>
    public double EdgeLength(double from, double to)
    {
        if (IsRound)
        {
            return SemiX * (to - from);
        }

        Beam beam = this;
        int panels = (int)Math.Ceiling(Math.Abs(to - from) / Panel);
        double sum = 0;
        for (int i = 0; i < panels; i++)
        {
            sum += GaussLegendreRule.Integrate(
                angle => beam.RadiusAt(Vector.AtAngle(angle)), from + ((to - from) * i / panels), from + ((to - from) * (i + 1) / panels), Nodes);
        }

        return sum;
    }

    /// <summary>Length of a displacement in half widths of the beam: below 1 inside the beam.</summary>
    public double Measure(Vector vector) => new Vector(vector.X / SemiX, vector.Y / SemiY).Length;

    /// <summary>The beam a little wider or narrower.</summary>
    public Beam Times(double factor) => new(SemiX * factor, SemiY * factor);

    private double Support(Vector normal) => new Vector(SemiX * normal.X, SemiY * normal.Y).Length;
}
