namespace GearBlanks.Curves.Offsets;

/// <summary>An upright rectangle, mm.</summary>
internal readonly record struct Box(double Left, double Bottom, double Right, double Top)
{
    public static Box Around(Point a, Point b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));

    public Box Grown(double margin) => new(Left - margin, Bottom - margin, Right + margin, Top + margin);

    public bool Meets(Box other) => Left <= other.Right && other.Left <= Right && Bottom <= other.Top && other.Bottom <= Top;
}
