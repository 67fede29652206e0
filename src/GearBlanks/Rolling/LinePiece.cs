using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>A straight piece of a side.</summary>
internal sealed class LinePiece : SidePiece
{
    private readonly double _aside;
    private readonly double _foot;
    private readonly int _sense;

    public LinePiece(Line line)
        : base(line.From.Radius, line.To.Radius)
    {
        (Point inner, Point outer) = line.From.Radius <= line.To.Radius ? (line.From, line.To) : (line.To, line.From);
        Vector outward = (outer - inner).Unit;
        double turn = (outer - default(Point)).Cross(outward);
        _aside = Math.Abs(turn);
        _sense = turn < 0 ? -1 : 1;
        _foot = outer.Angle - (_sense * Math.Atan2(AlongAt(outer.Radius), _aside));
    }

    /// <inheritdoc/>
    public override double AngleAt(double radius) => _foot + (_sense * Math.Atan2(AlongAt(radius), _aside));

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius) => new(AlongAt(radius) / radius, _sense * Math.Min(1, _aside / radius));

    private double AlongAt(double radius) => Math.Sqrt(Math.Max(0, (radius - _aside) * (radius + _aside)));
}
