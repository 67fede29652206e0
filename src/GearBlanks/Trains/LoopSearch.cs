using System.Collections.Immutable;
using Fractions;

namespace GearBlanks.Trains;

/// <summary>The equations of a train's meshes, and which of them hold one another still.</summary>
internal sealed class LoopSearch(int bodies, ImmutableArray<TrainMesh> meshes)
{
    /// <summary>The equations of some meshes, solved; their rows are in the order of the indices.</summary>
    public SparseElimination Solved(IEnumerable<int> indices, IReadOnlyList<int> driven) => new(bodies, [.. indices.Select(index => Equation(meshes[index]))], driven);

    /// <summary>Positions of those of some meshes that cannot turn against their carriers whatever the rest does.</summary>
    public IEnumerable<int> Still(IReadOnlyList<int> indices, SparseElimination solved) =>
        Enumerable.Range(0, indices.Count).Where(at => Rolling(meshes[indices[at]]).All(side => IsStill(side, solved)));

    /// <summary>The meshes that hold one of some meshes still, without those that are only held with it.</summary>
    /// <param name="indices">The meshes.</param>
    /// <param name="solved">Their equations.</param>
    /// <param name="still">Position of the one that is still.</param>
    public ImmutableArray<int> Cause(IReadOnlyList<int> indices, SparseElimination solved, int still)
    {
        while (true)
        {
            int held = indices[still];

            // What holds it may have been concluded without it, where others say the same as it does.
            int[] support = HoldsItself(meshes[held]) ? [held]
                : [.. solved.Combination(Rolling(meshes[held]).First(), holdsLast: false).Keys.Select(row => indices[row]).Append(held).Distinct().Order()];
            List<int> core = Core(support);
            if (core.Count == 0 || core.Count == support.Length)
            {
                return [.. support];
            }

            SparseElimination inner = Solved(core, []);
            if (Still(core, inner).FirstOrDefault(-1) is var next && next < 0)
            {
                return [.. support];
            }

            (indices, solved, still) = (core, inner, next);
        }
    }

    // (w1 - wc) z1 + (w2 - wc) z2 = 0; the frame's speed is zero.
    private static SparseRow Equation(TrainMesh mesh)
    {
        var row = new SparseRow();
        Add(row, mesh.First, mesh.FirstTeeth);
        Add(row, mesh.Second, mesh.SecondTeeth);
        Add(row, mesh.Carrier, -(mesh.FirstTeeth + mesh.SecondTeeth));
        return row;
    }

    private static void Add(SparseRow row, int body, int factor)
    {
        if (body != Train.Frame)
        {
            row.Add(body, new Fraction(factor));
        }
    }

    // The speed of either gear against the carrier.
    private static IEnumerable<SparseRow> Rolling(TrainMesh mesh) => ((int[])[mesh.First, mesh.Second]).Select(body =>
    {
        var form = new SparseRow();
        Add(form, body, 1);
        Add(form, mesh.Carrier, -1);
        return form;
    });

    // One of its gears is its carrier, or both are one body.
    private static bool HoldsItself(TrainMesh mesh) => mesh.First == mesh.Second || mesh.First == mesh.Carrier || mesh.Second == mesh.Carrier;

    private static bool IsStill(SparseRow form, SparseElimination solved)
    {
        var sum = new SparseRow();
        foreach ((int body, Fraction factor) in form.Terms)
        {
            sum.Add(solved.Expression(body), factor);
        }

        return sum.IsEmpty;
    }

    // What is left when meshes go one after the other that are a body's only ones: such a mesh holds nothing, unless it holds itself.
    private List<int> Core(int[] indices)
    {
        Dictionary<int, SparseRow> rows = indices.ToDictionary(index => index, index => Equation(meshes[index]));
        Dictionary<int, HashSet<int>> rowsOf = rows.SelectMany(row => row.Value.Terms.Keys, (row, body) => (row.Key, body))
            .GroupBy(pair => pair.body, pair => pair.Key).ToDictionary(group => group.Key, group => group.ToHashSet());
        var leaves = new Queue<int>(rowsOf.Where(pair => pair.Value.Count == 1).Select(pair => pair.Key));
        while (leaves.TryDequeue(out int leaf))
        {
            if (rowsOf[leaf].Count != 1)
            {
                continue;
            }

            int row = rowsOf[leaf].Single();
            if (HoldsItself(meshes[row]))
            {
                continue;
            }

            foreach (int body in rows[row].Terms.Keys.Where(body => rowsOf[body].Remove(row) && rowsOf[body].Count == 1))
            {
                leaves.Enqueue(body);
            }

            rows.Remove(row);
        }

        return [.. rows.Keys.Order()];
    }
}
