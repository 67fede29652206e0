using GearBlanks.Curves;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Rolling;

/// <summary>Angle and direction at a radius, each kind of piece against the curve's own points and tangents.</summary>
public sealed class SidePieceTests
{
    private const int Points = 200;

    [Theory]
    [InlineData(8, 0, 0)]
    [InlineData(13, 0.3, 0.05)]
    [InlineData(40, -0.2, 0.1)]
    [InlineData(40, 0, 0)]
    [InlineData(300, 0.5, 0.02)]
    public void Angles_and_directions_are_those_of_the_curve(int teeth, double shift, double thinning)
    {
        int seen = 0;
        foreach (BasicRack rack in (BasicRack[])[TestRacks.A, TestRacks.A with { FilletRadius = 0 }])
        {
            Outline outline = Toothing.Of(new GearData(teeth, 1, rack, shift, thinning)).Outline();
            foreach (Curve curve in outline.Pattern.SelectMany(curve => HeightSplit.Monotone(curve, isRack: false)).Where(curve => Math.Abs(curve.EndPoint.Radius - curve.StartPoint.Radius) > 1e-6))
            {
                SidePiece piece = SidePiece.Round(curve);
                for (int i = 0; i <= Points; i++)
                {
                    double parameter = curve.Start + ((curve.End - curve.Start) * i / Points);
                    Point point = curve.PointAt(parameter);
                    double radius = Math.Clamp(point.Radius, piece.Least, piece.Greatest);

                    // Where a fillet runs along its root circle, the radius hardly tells the place: its rounding is allowed there.
                    double allowed = 1e-11 + (1e-14 / Math.Max(1e-7, piece.SlopeAt(radius).X));
                    Assert.Equal(0, Math.IEEERemainder(piece.AngleAt(radius) - point.Angle, 2 * Math.PI), allowed);
                    Vector outward = (point - default(Point)).Unit;
                    Vector tangent = curve.TangentAt(parameter) * (curve.EndPoint.Radius > curve.StartPoint.Radius ? 1 : -1);
                    Vector slope = piece.SlopeAt(radius);
                    double direction = outward.Dot(tangent) > 1e-4 ? 1e-8 : 1e-4;
                    Assert.Equal(outward.Dot(tangent), slope.X, direction);
                    Assert.Equal(outward.Cross(tangent), slope.Y, direction);
                    seen++;
                }
            }
        }

        Assert.True(seen > 4 * Points);
    }
}
