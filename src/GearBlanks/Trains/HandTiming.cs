using Fractions;

namespace GearBlanks.Trains;

/// <summary>How well a hand keeps the time it should.</summary>
/// <param name="Period">Time of one turn, seconds, exactly.</param>
/// <param name="WantedPeriod">Time that one turn should take, seconds, exactly.</param>
public sealed record HandTiming(Fraction Period, Fraction WantedPeriod)
{
    private const int DegreesInATurn = 360;

    // The Julian year of 365.25 days (IAU; from memory).
    private const int SecondsInAYear = 31_557_600;

    /// <summary>Time of one turn, seconds.</summary>
    public double PeriodSeconds => Period.Nearest();

    /// <summary>Error of the period, parts per million: positive where the hand is slow.</summary>
    public double ErrorPpm => ((Period - WantedPeriod) / WantedPeriod * 1_000_000).Nearest();

    /// <summary>Time until the hand is one degree from where it should be, seconds; null where it never is.</summary>
    public double? SecondsToOneDegree
    {
        get
        {
            Fraction drift = Drift;
            return drift.IsZero ? null : (1 / (drift.Abs() * DegreesInATurn)).Nearest();
        }
    }

    /// <summary>Degrees by which the hand runs ahead in a year of 365.25 days: negative where it is slow.</summary>
    public double DegreesAYear => (Drift * DegreesInATurn * SecondsInAYear).Nearest();

    // Turns a second beyond those it should make.
    private Fraction Drift => (1 / Period) - (1 / WantedPeriod);
}
