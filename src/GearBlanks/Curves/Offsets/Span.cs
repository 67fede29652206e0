namespace GearBlanks.Curves.Offsets;

/// <summary>A stretch of a curve with bounds on where it lies: no point of it is further from its chord than <see cref="Bulge"/>.</summary>
internal readonly record struct Span(Curve Curve, double From, double To, Point First, Point Last, double Length)
{
    public static Span Of(Curve curve) => new(curve, curve.Start, curve.End, curve.StartPoint, curve.EndPoint, curve.Length);

    /// <summary>Of a way of length L over a chord c no point is further from the chord than sqrt(L^2 - c^2) / 2.</summary>
    public double Bulge => Math.Sqrt(Math.Max(0, (Length * Length) - (Last - First).Dot(Last - First))) / 2;

    public Box Box => Box.Around(First, Last).Grown(Bulge);

    public (Span Before, Span After) Halves()
    {
        double middle = (From + To) / 2;
        Point at = Curve.PointAt(middle);
        return (new Span(Curve, From, middle, First, at, Curve.LengthBetween(From, middle)), new Span(Curve, middle, To, at, Last, Curve.LengthBetween(middle, To)));
    }
}
