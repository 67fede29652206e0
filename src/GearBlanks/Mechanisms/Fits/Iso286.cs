namespace GearBlanks.Mechanisms.Fits;

/// <summary>
/// Standard tolerances and fundamental deviations in micrometres, for sizes up to 120 mm. Source: ISO 286-1:2010, tables 1 to 3; from memory,
/// the tolerances also recomputed from i = 0.45 D^(1/3) + 0.001 D in the tests.
/// </summary>
internal static class Iso286
{
    public const int LeastGrade = 5;
    public const int GreatestGrade = 11;

    // Upper ends of the ranges of size, mm.
    private static readonly double[] Ranges = [3, 6, 10, 18, 30, 50, 80, 120];

    // From 50 mm on, r and s are given for finer ranges.
    private static readonly double[] FineRanges = [3, 6, 10, 18, 30, 50, 65, 80, 100, 120];

    // From grade 4, which the deviations of holes need, to 11.
    private static readonly double[][] Tolerances =
    [
        [3, 4, 4, 5, 6, 7, 8, 10],
        [4, 5, 6, 8, 9, 11, 13, 15],
        [6, 8, 9, 11, 13, 16, 19, 22],
        [10, 12, 15, 18, 21, 25, 30, 35],
        [14, 18, 22, 27, 33, 39, 46, 54],
        [25, 30, 36, 43, 52, 62, 74, 87],
        [40, 48, 58, 70, 84, 100, 120, 140],
        [60, 75, 90, 110, 130, 160, 190, 220],
    ];

    // The deviation nearer to the nominal size: upper ones of shafts that run, as they are below it.
    private static readonly Dictionary<string, double[]> Below = new()
    {
        ["d"] = [20, 30, 40, 50, 65, 80, 100, 120],
        ["e"] = [14, 20, 25, 32, 40, 50, 60, 72],
        ["f"] = [6, 10, 13, 16, 20, 25, 30, 36],
        ["g"] = [2, 4, 5, 6, 7, 9, 10, 12],
        ["h"] = [0, 0, 0, 0, 0, 0, 0, 0],
    };

    // Lower ones of shafts that are pressed; k as in grades 4 to 7.
    private static readonly Dictionary<string, double[]> Above = new()
    {
        ["k"] = [0, 1, 1, 1, 2, 2, 2, 3],
        ["m"] = [2, 4, 6, 7, 8, 9, 11, 13],
        ["n"] = [4, 8, 10, 12, 15, 17, 20, 23],
        ["p"] = [6, 12, 15, 18, 22, 26, 32, 37],
        ["r"] = [10, 15, 19, 23, 28, 34, 41, 43, 51, 54],
        ["s"] = [14, 19, 23, 28, 35, 43, 53, 59, 71, 79],
    };

    /// <summary>The letters of holes; those of shafts are the same in small.</summary>
    public static IEnumerable<string> HoleLetters => Below.Keys.Append("js").Concat(Above.Keys).Select(letters => letters.ToUpperInvariant());

    // K of coarse grades is not in the standard.
    public static bool Has(string letters, int grade) =>
        grade is >= LeastGrade and <= GreatestGrade
        && letters switch
        {
            "K" => grade <= 8,
            _ => HoleLetters.Contains(letters) || (letters.All(char.IsAsciiLetterLower) && HoleLetters.Contains(letters.ToUpperInvariant())),
        };

    public static (double Lower, double Upper) Shaft(string letters, int grade, double size)
    {
        double tolerance = Tolerance(grade, size);
        if (letters == "js")
        {
            return (-tolerance / 2, tolerance / 2);
        }

        if (Below.TryGetValue(letters, out double[]? upper))
        {
            return (-At(upper, size) - tolerance, -At(upper, size));
        }

        double lower = letters == "k" && grade > 7 ? 0 : At(Above[letters], size);
        return (lower, lower + tolerance);
    }

    public static (double Lower, double Upper) Hole(string letters, int grade, double size)
    {
        double tolerance = Tolerance(grade, size);
        string shaft = letters.ToLowerInvariant();
        if (shaft == "js")
        {
            return (-tolerance / 2, tolerance / 2);
        }

        if (Below.TryGetValue(shaft, out double[]? lower))
        {
            return (At(lower, size), At(lower, size) + tolerance);
        }

        double upper = UpperOfPressed(shaft, grade, size);
        return (upper - tolerance, upper);
    }

    public static double Tolerance(int grade, double size) => At(Tolerances[grade - 4], size);

    // Holes up to grade 8 (K, M, N) or 7 (P and beyond) make the same fit as the shaft of the finer grade would: ES = -ei + IT(n) - IT(n-1).
    private static double UpperOfPressed(string shaft, int grade, double size)
    {
        bool isTransition = shaft is "k" or "m" or "n";
        if (shaft == "n" && grade > 8 && size > 3)
        {
            return 0;
        }

        double closer = size > 3 && grade <= (isTransition ? 8 : 7) ? Tolerance(grade, size) - Tolerance(grade - 1, size) : 0;
        return closer - At(Above[shaft], size);
    }

    private static double At(double[] table, double size)
    {
        double[] ranges = table.Length == Ranges.Length ? Ranges : FineRanges;
        return table[Array.FindIndex(ranges, to => size <= to)];
    }
}
