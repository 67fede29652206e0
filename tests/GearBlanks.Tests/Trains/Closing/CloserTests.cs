using CsCheck;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Trains.Closing;

namespace GearBlanks.Tests.Trains.Closing;

/// <summary>Profile shifts that close fixed frames: backlash as wanted, limits kept, and never worse than the best of a fine grid.</summary>
public sealed class CloserTests
{
    private const double Wanted = 0.04;

    /// <summary>KHK, Gear Technical Reference, Table 4.3: m 3, 12 and 24 teeth at a 56.4999 have x1 + x2 = 0.96; from memory.</summary>
    [Fact]
    public void The_sum_is_as_published()
    {
        double sum = ShiftSums.SumFor(new GearData(12, 3, TestRacks.A), new GearData(24, 3, TestRacks.A), 56.4999, 0);
        Assert.Equal(0.96, sum, 3e-5);
    }

    [Fact]
    public void Frames_are_closed_as_well_as_a_grid_can_or_the_reason_is_named()
    {
        (int closed, int open) = (0, 0);
        Tasks.Sample(
            task =>
            {
                ClosedGroup group = Closer.Solve(task).Single();
                (Level level, double objective) = Brute(task);
                if (level == Level.Fails && group.Level == Level.Fails)
                {
                    Interlocked.Increment(ref open);
                    Assert.NotEmpty(group.Obstacles);
                    return;
                }

                Assert.True(group.Level <= level, $"{group.Level}, the grid {level}: {Told(task)}");
                if (group.Level == level)
                {
                    Assert.True(group.Objective <= objective + 1e-4 + (0.001 * objective), $"{group.Objective}, the grid {objective}: {Told(task)}");
                }

                foreach (ClosingMesh mesh in task.Meshes)
                {
                    GearPair pair = PairOf(task, group.Data, mesh);
                    Assert.Equal(mesh.Backlash, pair.CircumferentialBacklash, 0.001);
                    Assert.True(Figures(pair, task.Limits).Max() <= group.Level, Told(task));
                }

                Interlocked.Increment(ref closed);
            },
            iter: 200);
        Assert.True(closed > 100, $"{closed} closed, {open} not");
    }

    /// <summary>The shifts that are comfortable are 0.0034 wide here, between two samples of the search: still the best of them is to be found.</summary>
    [Fact]
    public void A_narrow_stretch_is_searched_too()
    {
        ClosingTask task = Task(ShiftRule.EqualLand, [(39, 1.6704545454545454), (12, 1.6704545454545454)], [(0, 1, 41.94886363636363)]);
        ClosedGroup group = Closer.Solve(task).Single();
        Assert.Equal(Level.Ok, group.Level);
        Assert.Equal(0.16414, group.Objective, 2e-5);
    }

    [Theory]
    [InlineData(20, 40, 31.7)]
    [InlineData(11, 43, 29.0)]
    public void The_module_where_it_may_change_is_the_nearest_that_works(int first, int second, double distance)
    {
        ClosingTask task = Task(ShiftRule.EqualLand, [(first, 1), (second, 1)], [(0, 1, distance)]);
        Assert.Equal(Level.Fails, Closer.Solve(task)[0].Level);
        ClosedGroup group = Closer.Solve(task with { ChangesModule = true })[0];
        Assert.NotEqual(Level.Fails, group.Level);
        double module = group.Data[0].Module;
        Assert.Equal(module, group.Data[1].Module);
        Assert.Equal(0.04, PairOf(task, group.Data, task.Meshes[0]).CircumferentialBacklash, 0.001);
        for (int i = 1; i < Math.Round(Math.Abs(module - 1) / 0.005); i++)
        {
            foreach (int sign in (int[])[1, -1])
            {
                ClosingTask nearer = task with { Gears = [.. task.Gears.Select(gear => gear with { Data = gear.Data with { Module = 1 + (sign * i * 0.005) } })] };
                Assert.Equal(Level.Fails, Closer.Solve(nearer)[0].Level);
            }
        }

        ClosingTask held = task with { ChangesModule = true, Gears = task.Gears.SetItem(0, task.Gears[0] with { IsHeld = true }) };
        Assert.Equal(1, Closer.Solve(held)[0].Data[1].Module);
    }

    [Fact]
    public void What_is_said_to_work_works()
    {
        int followed = 0;
        Gen.Select(Gen.Int[9, 14], Gen.Int[30, 50], Gen.Double[1.1, 1.6]).Select((z1, z2, apart) => Task(ShiftRule.EqualLand, [(z1, 1), (z2, 1)], [(0, 1, ((z1 + z2) / 2.0) + apart)])).Sample(
            task =>
            {
                foreach (string nearest in Closer.Solve(task)[0].Nearest)
                {
                    double number = Advice.NumbersIn(nearest.Split(':')[^1])[0];
                    ClosingTask changed = nearest.StartsWith("distance", StringComparison.Ordinal) ? task with { Meshes = [task.Meshes[0] with { Distance = number }] }
                        : nearest.StartsWith("module", StringComparison.Ordinal) ? task with { Gears = [.. task.Gears.Select(gear => gear with { Data = gear.Data with { Module = number } })] }
                        : task with
                        {
                            Gears = [.. task.Gears.Select(gear => nearest.StartsWith(gear.Name + " with", StringComparison.Ordinal)
                                ? gear with { Data = (GearData)gear.Data with { Teeth = (int)Advice.NumbersIn(nearest[gear.Name.Length..])[0] } }
                                : gear)],
                        };
                    Assert.True(Closer.Solve(changed)[0].Level < Level.Fails, $"{nearest}: {Told(task)}");
                    Interlocked.Increment(ref followed);
                }
            },
            iter: 20);
        Assert.True(followed > 3, $"{followed}");
    }

    /// <summary>Two wheels on two wheels of one pair of axes, one tooth short: the frame of the demo.</summary>
    [Theory]
    [InlineData(ShiftRule.EqualLand)]
    [InlineData(ShiftRule.EqualSliding)]
    [InlineData(ShiftRule.Wheel)]
    [InlineData(ShiftRule.Pinion)]
    public void Sums_of_83_and_81_close_on_one_pair_of_axes(ShiftRule rule)
    {
        ClosingTask task = Task(rule, [(24, 0.8), (59, 0.8), (57, 0.8), (24, 0.8)], [(0, 1, 32.8), (2, 3, 32.8)]);
        ClosedGroup[] groups = [.. Closer.Solve(task)];
        Assert.Equal(2, groups.Length);
        foreach (ClosedGroup group in groups)
        {
            Assert.Equal(Level.Ok, group.Level);
            ClosingMesh mesh = task.Meshes[group.Meshes[0]];
            GearPair pair = PairOf(task, Filled(task, group), mesh);
            Assert.Equal(Wanted, pair.CircumferentialBacklash, 1e-4);
            double term = rule switch
            {
                ShiftRule.EqualLand => (pair.First.TipThickness - pair.Second.TipThickness) / 0.8,
                ShiftRule.EqualSliding => pair.ContactEnds!.Value.AtRoot.FirstSliding - pair.ContactEnds!.Value.AtTip.SecondSliding,
                ShiftRule.Wheel => pair.First.Teeth < pair.Second.Teeth ? pair.First.Data.ProfileShift : pair.Second.Data.ProfileShift,
                _ => pair.First.Teeth > pair.Second.Teeth ? pair.First.Data.ProfileShift : pair.Second.Data.ProfileShift,
            };

            // As the rule says, or as far as the pinion is not undercut.
            GearData pinion = (GearData)(pair.First.Teeth < pair.Second.Teeth ? pair.First : pair.Second).Data;
            Assert.True(Math.Abs(term) < 0.002 || Math.Abs(pinion.ProfileShift - ToothCheck.LeastShiftWithoutUndercut(pinion)) < 0.005, $"{term}");
        }
    }

    [Fact]
    public void A_gear_that_is_held_keeps_its_shift()
    {
        ClosingTask task = Task(ShiftRule.EqualLand, [(20, 1), (40, 1)], [(0, 1, 30.3)]);
        task = task with { Gears = [task.Gears[0] with { IsHeld = true, Data = task.Gears[0].Data with { ProfileShift = 0.2 } }, task.Gears[1]] };
        ClosedGroup group = Closer.Solve(task)[0];
        Assert.Equal(0.2, group.Data[0].ProfileShift);
        Assert.Equal(Wanted, PairOf(task, group.Data, task.Meshes[0]).CircumferentialBacklash, 1e-4);
        task = task with { Gears = [task.Gears[0], task.Gears[1] with { IsHeld = true }] };
        group = Closer.Solve(task)[0];
        Assert.Equal(Level.Fails, group.Level);
        Assert.Contains("contradict one another by 0.", group.Obstacles[0], StringComparison.Ordinal);
    }

    [Fact]
    public void An_idler_shares_its_shift()
    {
        ClosingTask task = Task(ShiftRule.EqualLand, [(20, 1), (30, 1), (40, 1)], [(0, 1, 25.2), (1, 2, 35.1)]);
        ClosedGroup group = Closer.Solve(task).Single();
        Assert.Equal(Level.Ok, group.Level);
        Assert.All(task.Meshes, mesh => Assert.Equal(Wanted, PairOf(task, group.Data, mesh).CircumferentialBacklash, 1e-4));
    }

    /// <summary>A loop of three meshes fixes all shifts: x1 + x2, x2 + x3 and x3 + x1 are given.</summary>
    [Fact]
    public void A_loop_of_three_leaves_no_choice()
    {
        ClosingTask task = Task(ShiftRule.EqualLand, [(20, 1), (30, 1), (40, 1)], [(0, 1, 25.2), (1, 2, 35.1), (2, 0, 30.3)]);
        ClosedGroup group = Closer.Solve(task).Single();
        Assert.All(task.Meshes, mesh => Assert.Equal(Wanted, PairOf(task, group.Data, mesh).CircumferentialBacklash, 1e-4));
    }

    [Fact]
    public void Tips_are_shortened_where_that_is_asked_for()
    {
        // So many shifts on standard tips leave no clearance at the roots.
        ClosingTask task = Task(ShiftRule.EqualLand, [(20, 1), (24, 1)], [(0, 1, 23.4)]);
        Assert.NotEqual(Level.Ok, Closer.Solve(task)[0].Level);
        ClosedGroup group = Closer.Solve(task with { ShortensTips = true })[0];
        Assert.Equal(Level.Ok, group.Level);
        Assert.All(group.Data, data => Assert.NotNull(((GearData)data).TipDiameter));
    }

    [Fact]
    public void Rings_and_racks_close_too()
    {
        var pinion = new ClosingGear("a", new GearData(20, 1, TestRacks.A), false);
        var ring = new ClosingGear("b", new RingData(60, 1, TestRacks.A, 80, TipDiameter: 58.6), false);
        var rack = new ClosingGear("c", new RackBarData(1, TestRacks.A, 40, 5), false);
        foreach (ClosingTask task in (ClosingTask[])
            [
                new([pinion, ring], [new ClosingMesh("m", 0, 1, "axes", 20.1, Wanted)], TestLimits.Common, ShiftRule.EqualLand, false),
                new([pinion, rack], [new ClosingMesh("m", 0, 1, "axes", 10.3, Wanted)], TestLimits.Common, ShiftRule.Wheel, false),
            ])
        {
            ClosedGroup group = Closer.Solve(task)[0];
            Assert.True(group.Level < Level.Fails, string.Join("; ", group.Obstacles));
            Assert.Equal(Wanted, PairOf(task, group.Data, task.Meshes[0]).CircumferentialBacklash, 1e-4);
        }
    }

    private static Gen<ClosingTask> Tasks { get; } = Gen.Select(
        Gen.Select(Gen.Int[9, 40], Gen.Int[12, 70], Gen.Int[9, 60], Gen.Double[0.5, 2]),
        Gen.Double[-0.5, 1.3], Gen.Double[-0.3, 0.9], Gen.Bool, Gen.OneOf(ShiftRule.EqualLand, ShiftRule.EqualSliding, ShiftRule.Wheel, ShiftRule.Pinion))
        .Select((teeth, apart, other, isChain, rule) =>
        {
            (int z1, int z2, int z3, double m) = teeth;
            (int, double)[] gears = [(z1, m), (z2, m), .. isChain ? [(z3, m)] : ((int, double)[])[]];
            (int, int, double)[] meshes = [(0, 1, m * (((z1 + z2) / 2.0) + apart)), .. isChain ? [(1, 2, m * (((z2 + z3) / 2.0) + other))] : ((int, int, double)[])[]];
            return Task(rule, gears, meshes);
        });

    private static ClosingTask Task(ShiftRule rule, (int Teeth, double Module)[] gears, (int First, int Second, double Distance)[] meshes) => new(
        [.. gears.Select((gear, i) => new ClosingGear($"g{i}", new GearData(gear.Teeth, gear.Module, TestRacks.A), false))],
        [.. meshes.Select((mesh, i) => new ClosingMesh($"m{i}", mesh.First, mesh.Second, $"axes {mesh.First} and {mesh.Second}", mesh.Distance, Wanted))],
        TestLimits.Common, rule, false);

    // The other gears' shifts follow from the first one's by Newton's steps on the backlash itself, which is nearly linear in them.
    private static (Level Level, double Objective) Brute(ClosingTask task)
    {
        double[] sums = [.. task.Meshes.Select(mesh => SumByBacklash(task, mesh))];
        (Level Level, double Objective) best = (Level.Fails, double.PositiveInfinity);
        for (double x = GearRanges.LeastShift; x <= GearRanges.GreatestShift; x += 0.005)
        {
            double[] shifts = [x, sums[0] - x, .. sums.Length > 1 ? [sums[1] - sums[0] + x] : (double[])[]];
            if (shifts.Any(s => s is < GearRanges.LeastShift or > GearRanges.GreatestShift))
            {
                continue;
            }

            try
            {
                ToothData[] data = [.. task.Gears.Select((gear, i) => gear.Data with { ProfileShift = shifts[i] })];
                GearPair[] pairs = [.. task.Meshes.Select(mesh => PairOf(task, data, mesh))];
                Level level = pairs.SelectMany(pair => Figures(pair, task.Limits)).Max();
                double objective = pairs.Sum(pair => Objective(pair, task.Rule));
                if (level < best.Level || (level == best.Level && objective < best.Objective))
                {
                    best = (level, objective);
                }
            }
            catch (GearGeometryException)
            {
                // No such teeth.
            }
        }

        return best;
    }

    private static double SumByBacklash(ClosingTask task, ClosingMesh mesh)
    {
        double m = task.Gears[0].Data.Module;
        double Miss(double sum) => PairLayout.Of(task.Gears[mesh.First].Data with { ProfileShift = sum }, task.Gears[mesh.Second].Data).BacklashAt(mesh.Distance) - mesh.Backlash;
        (double low, double high) = (-6, 6);
        while (high - low > 1e-12)
        {
            double middle = (low + high) / 2;
            (low, high) = Miss(middle) > 0 ? (middle, high) : (low, middle);
        }

        Assert.True(m > 0);
        return low;
    }

    private static double Objective(GearPair pair, ShiftRule rule)
    {
        double term = rule switch
        {
            ShiftRule.EqualLand => (pair.First.TipThickness - pair.Second.TipThickness) / pair.First.Module,
            ShiftRule.EqualSliding => pair.ContactEnds is var (root, tip)
                ? Greatest(root.FirstSliding, tip.FirstSliding) - Greatest(root.SecondSliding, tip.SecondSliding)
                : 1000,
            ShiftRule.Wheel => pair.First.Teeth <= pair.Second.Teeth ? pair.First.Data.ProfileShift : pair.Second.Data.ProfileShift,
            _ => pair.First.Teeth <= pair.Second.Teeth ? pair.Second.Data.ProfileShift : pair.First.Data.ProfileShift,
        };
        return term * term;
    }

    private static double Greatest(double one, double other) => Math.Min(1000, Math.Max(Math.Abs(one), Math.Abs(other)));

    private static IEnumerable<Level> Figures(GearPair pair, Limits limits) =>
        PairFigures.OfMesh(pair, limits).Concat(PairFigures.OfTeeth(pair, limits)).Where(figure => figure.Name != "backlash").Select(figure => figure.Level).Append(Level.Ok);

    private static GearPair PairOf(ClosingTask task, IReadOnlyList<ToothData> data, ClosingMesh mesh) =>
        GearPair.At(Toothing.Of(data[mesh.First]), Toothing.Of(data[mesh.Second]), mesh.Distance);

    private static ToothData[] Filled(ClosingTask task, ClosedGroup group) =>
        [.. task.Gears.Select((gear, i) => group.Gears.IndexOf(i) is >= 0 and int at ? group.Data[at] : gear.Data)];

    private static string Told(ClosingTask task) =>
        $"{task.Rule} m {task.Gears[0].Data.Module} z {string.Join(' ', task.Gears.Select(gear => ((GearData)gear.Data).Teeth))} a {string.Join(' ', task.Meshes.Select(mesh => mesh.Distance))}";
}
