using CsCheck;
using GearBlanks.Curves;

namespace GearBlanks.Tests.Curves;

public sealed class MotionTests
{
    private static readonly Gen<Vector> Vectors = Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50]).Select((x, y) => new Vector(x, y));

    private static readonly Gen<Motion> Motions = Gen.Select(Gen.Bool, Gen.Double[-7, 7], Vectors)
        .Select((mirror, angle, shift) => (mirror ? Motion.MirrorInX : Motion.None).Then(Motion.Turn(angle)).Then(Motion.Shift(shift)));

    private static readonly Gen<Point> Points = Vectors.Select(v => new Point(v.X, v.Y));

    private static void Near(Point expected, Point actual) => Assert.Equal(0, expected.DistanceTo(actual), 1e-11);

    [Fact]
    public void Then_does_one_after_the_other() => Gen.Select(Motions, Motions, Points).Sample((first, next, point) =>
    {
        Near(next.Apply(first.Apply(point)), first.Then(next).Apply(point));
        Assert.Equal(first.IsMirrored != next.IsMirrored, first.Then(next).IsMirrored);
    });

    [Fact]
    public void Composition_is_associative_and_None_changes_nothing() => Gen.Select(Motions, Motions, Motions, Points).Sample((a, b, c, point) =>
    {
        Near(a.Then(b).Then(c).Apply(point), a.Then(b.Then(c)).Apply(point));
        Near(a.Apply(point), Motion.None.Then(a).Then(Motion.None).Apply(point));
    });

    [Fact]
    public void Distances_stay_and_only_a_mirror_changes_the_hand() => Gen.Select(Motions, Points, Vectors, Vectors).Sample((motion, p, v, w) =>
    {
        Assert.Equal(v.Length, (motion.Apply(p + v) - motion.Apply(p)).Length, 1e-11);
        Assert.Equal(v.Cross(w) * (motion.IsMirrored ? -1 : 1), motion.Apply(v).Cross(motion.Apply(w)), 1e-9);
        Assert.Equal(0, (motion.Apply(p + v) - motion.Apply(p) - motion.Apply(v)).Length, 1e-11);
    });

    [Fact]
    public void Each_elementary_motion_does_what_its_name_says()
    {
        Near(new Point(3, -4), Motion.MirrorInX.Apply(new Point(3, 4)));
        Near(new Point(-4, 3), Motion.Turn(Math.PI / 2).Apply(new Point(3, 4)));
        Near(new Point(4, 6), Motion.Shift(new Vector(1, 2)).Apply(new Point(3, 4)));
        Near(new Point(-10, 4), Motion.MirrorInX.Then(Motion.Turn(Math.PI / 2)).Then(Motion.Shift(new Vector(-6, 1))).Apply(new Point(3, -4)));
        Near(Point.Polar(2, 2 * Math.PI * 5 / 7), Motion.TurnStep(5, 7).Apply(new Point(2, 0)));
        Near(new Point(2, 1), Motion.TurnStep(7, 7).Apply(new Point(2, 1)));
    }
}
