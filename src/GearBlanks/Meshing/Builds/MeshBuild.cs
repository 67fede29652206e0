using System.Collections.Immutable;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing.Builds;

/// <summary>One mesh with all that differs from build to build, and what its backlash can become.</summary>
/// <param name="Equation">Its backlash.</param>
/// <param name="Distance">Its centre distance at the reference climate, mm.</param>
/// <param name="Frame">Growth of what holds the distance.</param>
/// <param name="First">Growth of the first gear.</param>
/// <param name="Second">Growth of the second gear.</param>
/// <param name="Quantities">What differs.</param>
internal sealed record MeshBuild(
    BacklashEquation Equation, double Distance, Growth Frame, Growth First, Growth Second, ImmutableArray<Quantity> Quantities)
{
    // Far over what rounding does to a backlash, far below anything that can be made, mm.
    private const double Rounding = 1e-11;

    /// <summary>The backlash as drawn, mm.</summary>
    public double AsDrawn => At(default);

    /// <summary>The backlash with every quantity in its middle, mm.</summary>
    public double Mean(Spread spread) => At(Middles(spread));

    // How far the distance can be from the grown one, mm.
    private double Reach => Quantities.Where(quantity => quantity.On is Influence.Distance or Influence.Place).Sum(quantity => Math.Max(-quantity.Least, quantity.Most));

    /// <summary>The backlash of one build, mm.</summary>
    public double At(BuildState state) => Equation.At(
        (Distance * (1 + Frame.At(state.Kelvin, state.Percent))) + state.Apart,
        First.At(state.Kelvin, state.Percent), Second.At(state.Kelvin, state.Percent), state.FirstThicker, state.SecondThicker);

    /// <summary>
    /// The least and the greatest backlash of any build, mm: true bounds. The backlash rises or falls throughout with the distance and with each thickness, so
    /// those stand at their ends; of the climate, which moves frame and gears together, every corner is tried and what may lie between is added.
    /// </summary>
    public (double Least, double Most) Bounds() => (Extreme(-1), Extreme(1));

    /// <summary>
    /// The least and the greatest distance as they act on gears that have not grown, mm: growth of the gears counts where their working circles touch.
    /// </summary>
    public (double Least, double Most) ActingDistances(GearPair pair)
    {
        double[] grown = [.. Corners().Select(corner =>
            (Distance * (1 + Frame.At(corner.Kelvin, corner.Percent))) - Outward(pair.First, pair.FirstWorkingRadius, First.At(corner.Kelvin, corner.Percent))
            - Outward(pair.Second, pair.SecondWorkingRadius, Second.At(corner.Kelvin, corner.Percent)))];
        return (Math.Max(0, grown.Min() - Reach), grown.Max() + Reach);

        double Outward(Toothing one, double radius, double growth) =>
            one is RackBar ? 0 : one is ExternalGear && pair is RingPair ? -radius * growth : radius * growth;
    }

    /// <summary>How much thicker each one's teeth are at most where play is least (-1), or at least where it is greatest (1), mm.</summary>
    public (double First, double Second) Thicker(int side) => (Thickest(Influence.FirstThickness, side), Thickest(Influence.SecondThickness, side));

    /// <summary>The least backlash, mm, with a distance greater by a length and teeth thicker by another, all told.</summary>
    public double LeastWith(double further, double thicker) => (this with { Distance = Distance + further }).Extreme(-1, thicker);

    /// <summary>What each quantity alone takes and gives, all others as drawn, and its standard deviation, mm of backlash.</summary>
    public ImmutableArray<Contribution> Contributions(Spread spread)
    {
        double drawn = AsDrawn;
        BuildState middle = Middles(spread);
        return [.. Quantities.Select(quantity =>
        {
            double one = At(default(BuildState).Moved(quantity.On, quantity.On == Influence.Place ? -quantity.Most : quantity.Least));
            double other = At(default(BuildState).Moved(quantity.On, quantity.Most));
            return new Contribution(
                quantity.Name, quantity.Of, Math.Max(0, drawn - Math.Min(one, other)), Math.Max(0, Math.Max(one, other) - drawn), Deviation(quantity, middle, spread));
        })];
    }

    // By the slope at the middle of everything. Crossed teeth lose the same backlash whichever way they cross: the spread of a normal quantity without its sign.
    private double Deviation(Quantity quantity, BuildState middle, Spread spread)
    {
        double slope = Math.Abs(Slope(quantity.On, middle));
        return quantity.On switch
        {
            Influence.Place => slope * Across(quantity, spread),
            Influence.Crossing => slope * Across(quantity, spread) * Math.Sqrt(1 - (2 / Math.PI)),
            _ => slope * quantity.Half * Math.Sqrt(spread.Variance),
        };
    }

    // A displacement's two parts are as likely as one another.
    private static double Across(Quantity quantity, Spread spread) => quantity.Half * Math.Sqrt((1 + spread.Variance) / 2);

    private double Slope(Influence on, BuildState middle)
    {
        const double step = 1e-4;
        return (At(middle.Moved(on, step)) - At(middle.Moved(on, -step))) / (2 * step);
    }

    private BuildState Middles(Spread spread)
    {
        double crossing = Quantities.Where(quantity => quantity.On == Influence.Crossing).Sum(quantity => Across(quantity, spread) * Across(quantity, spread));
        return Quantities
            .Where(quantity => quantity.On is not (Influence.Place or Influence.Crossing))
            .Aggregate(default(BuildState), (state, quantity) => state.Moved(quantity.On, quantity.Middle))
            .Moved(Influence.Crossing, Math.Sqrt(crossing * 2 / Math.PI));
    }

    private double Extreme(int side, double thicker = 0)
    {
        double apart = side * Equation.Sense * Reach;
        double first = Thickest(Influence.FirstThickness, side) + Thickest(Influence.Crossing, side) + thicker;
        double second = Thickest(Influence.SecondThickness, side);
        var at = new BuildState(apart, first, second, 0, 0);
        double extreme = Corners().Select(corner => side * At(at with { Kelvin = corner.Kelvin, Percent = corner.Percent })).Max();
        return side * (extreme + Bend(at) + Rounding);
    }

    // Thick teeth take backlash.
    private double Thickest(Influence on, int side) => Quantities.Where(quantity => quantity.On == on).Sum(quantity => side < 0 ? quantity.Most : quantity.Least);

    // Between the corners the backlash can pass them only where it is nearly level, and then by no more than it bends.
    private double Bend(BuildState at)
    {
        (Quantity Range, double Bend)[] climate = [.. Quantities
            .Where(quantity => quantity.On is Influence.Temperature or Influence.Humidity)
            .Select(quantity => (quantity, Bend(quantity, at.Apart)))];
        double all = climate.Sum(one => one.Bend);
        return climate.Where(one => !IsSteep(one.Range, at, all)).Sum(one => one.Bend);
    }

    private double Bend(Quantity quantity, double apart)
    {
        BuildState range = default(BuildState).Moved(quantity.On, 2 * quantity.Half);
        return Equation.Bend(
            Distance + apart, Frame.At(range.Kelvin, range.Percent), First.At(range.Kelvin, range.Percent), Second.At(range.Kelvin, range.Percent));
    }

    // The slope changes along a range by eight times the bend over it, half of that to either side of its mean; the other range can change it by as much again.
    private bool IsSteep(Quantity quantity, BuildState at, double bends)
    {
        double[] climbs = [.. Corners(quantity).Select(corner =>
        {
            BuildState here = at with { Kelvin = corner.Kelvin, Percent = corner.Percent };
            return At(here.Moved(quantity.On, quantity.Most)) - At(here.Moved(quantity.On, quantity.Least));
        })];
        return climbs.All(climb => climb > 8 * bends) || climbs.All(climb => climb < -8 * bends);
    }

    // Of the climate, one range left at the reference where it is looked along.
    private IEnumerable<BuildState> Corners(Quantity? along = null) =>
        from kelvin in along?.On == Influence.Temperature ? [0] : Ends(Influence.Temperature)
        from percent in along?.On == Influence.Humidity ? [0] : Ends(Influence.Humidity)
        select new BuildState(0, 0, 0, kelvin, percent);

    private double[] Ends(Influence on) => Quantities.FirstOrDefault(quantity => quantity.On == on) is { } range ? [range.Least, range.Most] : [0];
}

/// <summary>One build of one mesh.</summary>
/// <param name="Apart">How much greater the distance is, mm.</param>
/// <param name="FirstThicker">How much thicker the first gear's teeth are, mm.</param>
/// <param name="SecondThicker">The same of the second.</param>
/// <param name="Kelvin">Temperature over the reference, K.</param>
/// <param name="Percent">Relative humidity over the reference, per cent.</param>
internal readonly record struct BuildState(double Apart, double FirstThicker, double SecondThicker, double Kelvin, double Percent)
{
    public BuildState Moved(Influence on, double by) => on switch
    {
        Influence.FirstThickness or Influence.Crossing => this with { FirstThicker = FirstThicker + by },
        Influence.SecondThickness => this with { SecondThicker = SecondThicker + by },
        Influence.Temperature => this with { Kelvin = Kelvin + by },
        Influence.Humidity => this with { Percent = Percent + by },
        _ => this with { Apart = Apart + by },
    };
}

/// <summary>What one quantity alone does to a mesh's backlash.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Of">Whose it is; empty where it is the mesh's own.</param>
/// <param name="Takes">The most backlash that it takes, mm.</param>
/// <param name="Gives">The most that it gives, mm.</param>
/// <param name="Deviation">Standard deviation, mm.</param>
public sealed record Contribution(string Name, string Of, double Takes, double Gives, double Deviation);
