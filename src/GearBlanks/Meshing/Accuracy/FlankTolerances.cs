namespace GearBlanks.Meshing.Accuracy;

/// <summary>
/// Flank tolerances of one gear by class. Source: ISO 1328-1:2013, 5.3, runout by its informative annex; the formulas from memory. Class 5 is the one that the
/// formulas give, and each coarser one allows the square root of 2 times as much.
/// </summary>
/// <param name="SinglePitch">f_pT, mm: (0.001 d + 0.4 m + 5) micrometres in class 5.</param>
/// <param name="CumulativePitch">F_pT, mm: (0.002 d + 0.55 sqrt d + 0.7 m + 12) micrometres.</param>
/// <param name="ProfileSlope">f_HaT, mm: (0.4 m + 0.001 d + 4) micrometres.</param>
/// <param name="ProfileForm">f_faT, mm: (0.55 m + 5) micrometres.</param>
/// <param name="Profile">F_aT, mm: the root of the sum of the squares of slope and form.</param>
/// <param name="Runout">F_rT, mm: 0.9 F_pT.</param>
internal sealed record FlankTolerances(
    double SinglePitch, double CumulativePitch, double ProfileSlope, double ProfileForm, double Profile, double Runout)
{
    /// <summary>The finest class.</summary>
    public const int Finest = 1;

    /// <summary>The coarsest class.</summary>
    public const int Coarsest = 11;

    private const int ClassOfFormulas = 5;

    /// <summary>The tolerances of a class.</summary>
    /// <param name="grade">Flank tolerance class A, 1 to 11.</param>
    /// <param name="diameter">Reference diameter d, mm.</param>
    /// <param name="module">Module m, mm.</param>
    public static FlankTolerances Of(int grade, double diameter, double module)
    {
        double step = Math.Pow(2, (grade - ClassOfFormulas) / 2.0);
        double cumulative = ((0.002 * diameter) + (0.55 * Math.Sqrt(diameter)) + (0.7 * module) + 12) * step;
        double slope = ((0.4 * module) + (0.001 * diameter) + 4) * step;
        double form = ((0.55 * module) + 5) * step;
        return new FlankTolerances(
            Millimetres(((0.001 * diameter) + (0.4 * module) + 5) * step), Millimetres(cumulative), Millimetres(slope), Millimetres(form),
            Millimetres(Math.Sqrt((slope * slope) + (form * form))), Millimetres(0.9 * cumulative));
    }

    /// <summary>
    /// A tolerance as the standard prints it, micrometres: over 10 whole, from 5 to 10 to a half, below to a tenth. Source: ISO 1328-1, rounding rules; from memory.
    /// </summary>
    public static double Rounded(double micrometres)
    {
        double unit = micrometres > 10 ? 1 : micrometres >= 5 ? 0.5 : 0.1;
        return Math.Round(micrometres / unit, MidpointRounding.AwayFromZero) * unit;
    }

    private static double Millimetres(double micrometres) => Rounded(micrometres) / 1000;
}
