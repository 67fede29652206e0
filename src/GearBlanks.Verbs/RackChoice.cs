using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>Module and rack from what the command line says.</summary>
internal sealed record RackChoice(double Module, BasicRack Rack)
{
    private const double MillimetresInAnInch = 25.4;
    private const double RadiansInADegree = Math.PI / 180;

    // Degrees typed by a person against degrees in a profile: equal but for rounding.
    private const double Agreement = 1e-9;

    public static Outcome<RackChoice> Of(GearNumbers numbers)
    {
        if (numbers.Module is null == numbers.DiametralPitch is null)
        {
            return CommandLine.Problem(
                "--module", null, numbers.Module is null ? "Neither --module nor --diametral-pitch is given" : "Both --module and --diametral-pitch are given",
                "one of the two");
        }

        double module = numbers.Module ?? (MillimetresInAnInch / numbers.DiametralPitch!.Value);
        Outcome<BasicRack> found = ProfileFinder.BesideJob("").Rack(numbers.Rack ?? DefaultNames.Rack, CommandLine.Place);
        if (found.Value is not { } rack)
        {
            return found.Problems.Select(AsOption).ToImmutableArray();
        }

        if (numbers.PressureAngleDegrees is { } degrees)
        {
            double angle = degrees * RadiansInADegree;
            if (numbers.Rack is not null && Math.Abs(angle - rack.PressureAngle) > Agreement)
            {
                return CommandLine.Problem(
                    "--pressure-angle", degrees.ToString(CultureInfo.InvariantCulture), $"Rack {rack.Name} has another pressure angle",
                    "leave --pressure-angle out, or --rack", (rack.PressureAngle / RadiansInADegree).ToString("0.####", CultureInfo.InvariantCulture));
            }

            rack = Math.Abs(angle - rack.PressureAngle) > Agreement
                ? rack with { PressureAngle = angle, Name = string.Create(CultureInfo.InvariantCulture, $"with the proportions of {rack.Name} at {degrees:0.####} degrees") }
                : rack;
        }

        return new RackChoice(module, rack);
    }

    // A rack that is asked for on the command line is no key of a job.
    private static Problem AsOption(Problem problem) => problem.Place != CommandLine.Place ? problem : problem with
    {
        Key = "--rack",
        Message = "There is no rack of this name in racks/ or profiles/racks/ of this folder, or built in",
    };
}
