using System.Globalization;
using System.Text;

namespace GearBlanks.Benchmarks;

/// <summary>Job texts with a hundred gears, some of them undercut, shifted or tight, as a real job's are.</summary>
internal static class HundredGears
{
    public const string Idlers = "100 idlers";
    public const string Arbors = "50 arbors";

    private const string Head =
        """
        title = "Hundred gears"
        defaults = { module = 0.8, rack = "iso-53-a", material = "brass", thickness = 2, bore = 3, backlash = 0.032 }

        """;

    // Of every kind that there is, as small as a careful shop's.
    private const string Conditions =
        """
        conditions = { centre-distance-tolerance = 0.005, post-tilt = 0.0002, post-parallelism = 0.0001, thickness-tolerance = 0.002, edge-taper = 0.02, eccentricity = 0.002,
          bore-clearance = 0.005, end-play = 0.1, sheet-tolerance = 0.02, temperature = [15, 25], humidity = [40, 60], frame-material = "brass" }

        """;

    private static readonly int[] Wheels = [24, 59, 13, 57, 40, 87, 19, 81, 30, 8];

    public static string Text(string arrangement, bool hasConditions = false)
    {
        var text = new StringBuilder(Head);
        text.Append(hasConditions ? Conditions : "");
        if (arrangement == Idlers)
        {
            WriteRow(text, 100, i => [Wheels[i % Wheels.Length]]);
        }
        else
        {
            WriteRow(text, 50, i => [Wheels[i % Wheels.Length] + 20, Wheels[(i + 3) % Wheels.Length]]);
        }

        return text.Append("drive = { sandwich = \"s0\", turn = \"1 h\" }\n").ToString();
    }

    // On each arbor the last gear drives the next arbor's first one; the arbors go to and fro, so that neighbours but one do not meet.
    private static void WriteRow(StringBuilder text, int arbors, Func<int, int[]> gears)
    {
        var lists = (Axes: new StringBuilder(), Sandwiches: new StringBuilder(), Meshes: new StringBuilder());
        for (int i = 0; i < arbors; i++)
        {
            double distance = i == 0 ? 0 : 0.4 * (gears(i - 1)[^1] + gears(i)[0]);
            Add(lists.Axes, i == 0 ? (FormattableString)$"name = 'a0', position = [0, 0]" : $"name = 'a{i}', from = 'a{i - 1}', distance = {distance:0.####}, direction = {30 - (60 * (i % 2))}");
            string layers = string.Join(", ", gears(i).Select((z, k) => FormattableString.Invariant(
                $"{{ gear = 'g{i}-{k}', teeth = {z}, profile-shift = {(z < 17 ? 0.3 : 0)}{(z < 19 ? "" : ", screws = { count = 3, circle = 8, hole = 1 }")} }}")));
            Add(lists.Sandwiches, $"name = 's{i}', axis = 'a{i}', height = {2 * (gears(0).Length - 1) * i}, layers = [{layers}]");
            if (i > 0)
            {
                Add(lists.Meshes, $"gears = ['g{i - 1}-{gears(0).Length - 1}', 'g{i}-0']");
            }
        }

        text.Append(CultureInfo.InvariantCulture, $"axes = [\n{lists.Axes}]\nsandwiches = [\n{lists.Sandwiches}]\nmeshes = [\n{lists.Meshes}]\n");
    }

    private static void Add(StringBuilder list, FormattableString item) => list.Append("  { ").Append(FormattableString.Invariant(item)).Append(" },\n");
}
