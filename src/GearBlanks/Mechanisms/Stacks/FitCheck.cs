using System.Globalization;
using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>What runs must have a clearance, what is pressed an interference, at the least and the greatest sizes.</summary>
internal static class FitCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism) => Fit.Of(mechanism.Stack)
        .Where(fit => fit.IsKnown && fit.Seat != JobSeat.Held)
        .SelectMany(fit => fit.Seat == JobSeat.Runs ? Running(fit, mechanism.Limits.Stack.FitClearance) : Pressed(fit, mechanism.Limits.Stack.FitInterference));

    private static IEnumerable<Finding> Running(Fit fit, Limit limit)
    {
        (Size bore, Size spindle) = (fit.Bore, fit.Spindle.Outside);
        yield return Check.Of(
            "fit-clearance", fit.Place, fit.LeastClearance, Lower(limit), "mm", $"Least clearance of the bore on spindle {fit.Spindle.Name}",
            bound => $"Make the bore at least {Up(spindle.Greatest + bound)} mm, or the spindle at most {Down(bore.Least - bound)} mm.");
        yield return Check.Of(
            "fit-clearance", fit.Place, fit.GreatestClearance, Upper(limit), "mm", $"Greatest clearance of the bore on spindle {fit.Spindle.Name}",
            bound => $"Make the bore at most {Down(spindle.Least + bound)} mm, or the spindle at least {Up(bore.Greatest - bound)} mm.");
    }

    private static IEnumerable<Finding> Pressed(Fit fit, Limit limit)
    {
        (Size bore, Size spindle) = (fit.Bore, fit.Spindle.Outside);
        yield return Check.Of(
            "fit-interference", fit.Place, -fit.GreatestClearance, Lower(limit), "mm", $"Least interference of the bore with spindle {fit.Spindle.Name}",
            bound => $"Make the bore at most {Down(spindle.Least - bound)} mm, or the spindle at least {Up(bore.Greatest + bound)} mm.");
        yield return Check.Of(
            "fit-interference", fit.Place, -fit.LeastClearance, Upper(limit), "mm", $"Greatest interference of the bore with spindle {fit.Spindle.Name}",
            bound => $"Make the bore at least {Up(spindle.Greatest - bound)} mm, or the spindle at most {Down(bore.Least + bound)} mm.");
    }

    private static Limit Lower(Limit limit) => limit with { TightAbove = null, FailsAbove = null };

    private static Limit Upper(Limit limit) => limit with { FailsBelow = null, TightBelow = null };

    // To thousandths, so that making it is enough.
    private static string Up(double size) => Written(Math.Ceiling((size * 1000) - 1e-7) / 1000);

    private static string Down(double size) => Written(Math.Floor((size * 1000) + 1e-7) / 1000);

    private static string Written(double size) => size.ToString("0.###", CultureInfo.InvariantCulture);
}
