using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Fractions;
using GearBlanks.Trains;
using MathNet.Numerics.LinearAlgebra;

namespace GearBlanks.Tests.Trains;

/// <summary>Random trains with arms against dense floating-point algebra (singular values), written down apart from the solver.</summary>
public sealed class RandomArmTests
{
    private const double Small = 1e-9;

    // As many meshes as bodies and more: most of them lock.
    private static readonly Gen<Case> Cases =
        from bodies in Gen.Int[2, 9]
        from count in Gen.Int[1, bodies + 1]
        from random in Trains(bodies, count)
        select random;

    // Fewer meshes, one of them now and then twice with other counts of the same ratio: most of them turn.
    private static readonly Gen<Case> Turning = (
        from bodies in Gen.Int[4, 10]
        from count in Gen.Int[2, 1 + (bodies / 2)]
        from random in Trains(bodies, count)
        from again in Gen.Bool
        select again
            ? random with { Meshes = random.Meshes.Add(random.Meshes[0] with { Name = "again", FirstTeeth = 2 * random.Meshes[0].FirstTeeth, SecondTeeth = 2 * random.Meshes[0].SecondTeeth }) }
            : random).Where(random => Still(random.Bodies, random.Meshes).Length == 0);

    [Fact]
    public void Locked_trains_are_those_with_a_mesh_that_cannot_roll() => Cases.Sample(
        random => Assert.Equal(Still(random.Bodies, random.Meshes).Length > 0, !Solved(random).Locked.IsEmpty), iter: 3000, threads: 1);

    [Fact]
    public void A_locked_loop_locks_alone() => Cases.Where(random => Still(random.Bodies, random.Meshes).Length > 0).Sample(
        random =>
        {
            foreach (LockedLoop loop in Solved(random).Locked)
            {
                Assert.True(Still(random.Bodies, loop.Loop).Length > 0, string.Join("; ", loop.Loop) + Equations(random.Bodies, loop.Loop).Svd().S);
                Assert.Equal(loop.Mesh, loop.Loop[^1]);
            }
        },
        iter: 500, threads: 1);

    // Two alike gears in one fixed ring turn alike, so that a mesh between them on one of them seems to be held by the ring; it holds itself.
    [Fact]
    public void A_mesh_on_its_own_gear_is_a_loop_by_itself()
    {
        TrainMesh one = new("one", 0, Train.Frame, 13, -67) { Carrier = 1 };
        TrainMesh other = new("other", 2, Train.Frame, 13, -67) { Carrier = 1 };
        TrainMesh own = new("own", 0, 2, 20, 30) { Carrier = 2 };
        LockedLoop loop = Assert.Single(Train.Solve(3, [one, other, own], driven: null).Locked);
        Assert.Equal([own], loop.Loop);
    }

    [Fact]
    public void Speeds_agree_with_least_squares_and_are_missing_where_the_null_space_moves_a_body()
    {
        int settled = 0;
        Turning.Sample(
            random =>
            {
                Train train = Solved(random);
                if (!train.Contradicted.IsEmpty)
                {
                    return;
                }

                (Matrix<double> matrix, Vector<double> right) = Driven(random);
                Matrix<double> free = NullSpace(matrix);
                Vector<double> speeds = LeastSquares(matrix, right);
                Assert.True(((matrix * speeds) - right).L2Norm() < 1e-6);
                for (int body = 0; body < random.Bodies; body++)
                {
                    bool isFree = free.ColumnCount > 0 && free.Row(body).L2Norm() > Small;
                    Assert.Equal(isFree, train.Speeds[body] is null);
                    if (train.Speeds[body] is { } speed)
                    {
                        Assert.Equal(speeds[body], speed.ToDouble(), 1e-6 * (1 + Math.Abs(speeds[body])));
                        settled++;
                    }
                }
            },
            iter: 2000, threads: 1);
        Assert.True(settled > 1000);
    }

    [Fact]
    public void Drives_contradict_exactly_where_no_speeds_fit() => Turning.Sample(
        random =>
        {
            (Matrix<double> matrix, Vector<double> right) = Driven(random);
            double miss = ((matrix * LeastSquares(matrix, right)) - right).L2Norm();
            Assert.Equal(miss > 1e-6, !Solved(random).Contradicted.IsEmpty);
        },
        iter: 2000, threads: 1);

    [Fact]
    public void There_are_as_many_surplus_loops_as_rows_beyond_the_rank() => Turning.Sample(
        random =>
        {
            ImmutableArray<TrainTie> surplus = [.. Solved(random).Surplus.Where(tie => tie.Driven.IsEmpty)];
            Assert.Equal(random.Meshes.Length - Rank(Equations(random.Bodies, random.Meshes)), surplus.Length);
            Assert.All(surplus, tie => Assert.Equal(tie.Loop.Length - 1, Rank(Equations(random.Bodies, tie.Loop))));
        },
        iter: 2000, threads: 1);

    [Fact]
    public void A_slip_moves_a_body_as_far_as_the_solved_equations_say() => Turning.Sample(
        random =>
        {
            Train train = Solved(random);
            Matrix<double> equations = Equations(random.Bodies, random.Meshes);
            if (!train.Contradicted.IsEmpty || Rank(equations) < random.Meshes.Length || train.Speeds.All(speed => speed is null))
            {
                return;
            }

            int body = Enumerable.Range(0, random.Bodies).Last(one => train.Speeds[one] is not null);
            Dictionary<int, double> slips = train.SlipsOf(body).ToDictionary(slip => slip.Index, slip => slip.TurnsPerTooth.ToDouble());
            Matrix<double> matrix = Driven(random).Matrix;
            if (Rank(matrix) < matrix.RowCount)
            {
                return;
            }

            for (int mesh = 0; mesh < random.Meshes.Length; mesh++)
            {
                Vector<double> right = Vector<double>.Build.Dense(matrix.RowCount);
                right[mesh] = 1;
                Assert.Equal(LeastSquares(matrix, right)[body], slips.GetValueOrDefault(mesh), 1e-6);
            }
        },
        iter: 2000, threads: 1);

    private static Train Solved(Case random) => Train.Solve(random.Bodies, random.Meshes, random.Drives);

    private static Matrix<double> Equations(int bodies, ImmutableArray<TrainMesh> meshes)
    {
        Matrix<double> matrix = Matrix<double>.Build.Dense(meshes.Length, bodies);
        for (int i = 0; i < meshes.Length; i++)
        {
            TrainMesh mesh = meshes[i];
            foreach ((int body, int teeth) in ((int, int)[])[(mesh.First, mesh.FirstTeeth), (mesh.Second, mesh.SecondTeeth)])
            {
                if (body >= 0)
                {
                    matrix[i, body] += teeth;
                }

                if (mesh.Carrier >= 0)
                {
                    matrix[i, mesh.Carrier] -= teeth;
                }
            }
        }

        return matrix;
    }

    private static (Matrix<double> Matrix, Vector<double> Right) Driven(Case random)
    {
        Matrix<double> equations = Equations(random.Bodies, random.Meshes);
        Matrix<double> drives = Matrix<double>.Build.Dense(random.Drives.Length, random.Bodies, (i, body) => random.Drives[i].Body == body ? 1 : 0);
        Vector<double> right = Vector<double>.Build.Dense(
            equations.RowCount + drives.RowCount, i => i < equations.RowCount ? 0 : random.Drives[i - equations.RowCount].Speed.ToDouble());
        return (equations.Stack(drives), right);
    }

    // Meshes whose gears stand still against their carrier in every motion that the meshes allow.
    private static int[] Still(int bodies, ImmutableArray<TrainMesh> meshes)
    {
        Matrix<double> free = NullSpace(Equations(bodies, meshes));
        return [.. Enumerable.Range(0, meshes.Length).Where(i => Against(meshes[i].First, i) && Against(meshes[i].Second, i))];

        bool Against(int body, int i) => free.ColumnCount == 0 || (Row(body) - Row(meshes[i].Carrier)).L2Norm() < Small;

        Vector<double> Row(int body) => body < 0 ? Vector<double>.Build.Dense(free.ColumnCount) : free.Row(body);
    }

    private static Gen<Case> Trains(int bodies, int count) =>
        from meshes in (from first in Gen.Int[-1, bodies - 1]
                        from second in Gen.Int[-1, bodies - 1]
                        from carrier in Gen.Int[-1, bodies - 1]
                        from teeth in Gen.Select(Gen.Int[4, 40], Gen.Int[4, 40], Gen.Bool)
                        where first != second
                        select new TrainMesh("", first, second, teeth.Item1, teeth.Item3 ? -teeth.Item2 - 40 : teeth.Item2) { Carrier = carrier }).Array[count]
        from drives in Gen.Select(Gen.Int[0, bodies - 1], Gen.Int[-5, 5]).Array[1, 3]
        select new Case(
            bodies, [.. meshes.Select((mesh, i) => mesh with { Name = i.ToString(CultureInfo.InvariantCulture) })],
            [.. drives.DistinctBy(drive => drive.Item1).Select(drive => new TrainDrive(drive.Item1, new Fraction(drive.Item2)))]);

    // The shortest solution, without directions in which nothing is said.
    private static Vector<double> LeastSquares(Matrix<double> matrix, Vector<double> right)
    {
        var decomposed = matrix.Svd();
        Vector<double> turned = decomposed.U.TransposeThisAndMultiply(right);
        Vector<double> sum = Vector<double>.Build.Dense(matrix.ColumnCount);
        for (int i = 0; i < decomposed.S.Count; i++)
        {
            if (decomposed.S[i] > Small)
            {
                sum += decomposed.VT.Row(i) * (turned[i] / decomposed.S[i]);
            }
        }

        return sum;
    }

    private static int Rank(Matrix<double> matrix) => matrix.Svd(computeVectors: false).S.Count(value => value > Small);

    private static Matrix<double> NullSpace(Matrix<double> matrix)
    {
        // Square, so that the decomposition gives every direction.
        Matrix<double> square = Matrix<double>.Build.Dense(Math.Max(matrix.RowCount, matrix.ColumnCount), matrix.ColumnCount);
        square.SetSubMatrix(0, 0, matrix);
        var decomposed = square.Svd();
        int rank = decomposed.S.Count(value => value > Small);
        return decomposed.VT.Transpose().SubMatrix(0, matrix.ColumnCount, rank, matrix.ColumnCount - rank);
    }

    private sealed record Case(int Bodies, ImmutableArray<TrainMesh> Meshes, ImmutableArray<TrainDrive> Drives);
}
