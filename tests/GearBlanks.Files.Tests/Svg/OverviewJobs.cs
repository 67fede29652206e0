using System.Globalization;
using System.Text;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Svg;

/// <summary>Mechanisms for pictures: a dial, a tiny pair that fails, a long row, a field of a hundred gears.</summary>
internal static class OverviewJobs
{
    public const string TideDial = """
        title = "Tide and moon dial"
        [defaults]
        module = 0.8
        thickness = 2
        bore = 3
        thinning = 0.016
        backlash = 0.032
        [[axes]]
        name = "column"
        position = [0, 0]
        [[axes]]
        name = "first lay"
        from = "column"
        distance = 32.8
        direction = 90
        [[axes]]
        name = "second lay"
        from = "column"
        distance = 40
        direction = -30
        [[sandwiches]]
        name = "day arbor"
        axis = "column"
        height = 2
        layers = [{ gear = "day", teeth = 24, profile-shift = -0.10 }]
        [[sandwiches]]
        name = "first lay"
        axis = "first lay"
        height = 2
        layers = [
          { gear = "day wheel", teeth = 59, profile-shift = -0.376, screws = { count = 3, circle = 30, hole = 1.6 } },
          { washer = 0.5 },
          { gear = "tide driver", teeth = 57, profile-shift = 0.222, screws = { count = 3, circle = 30, hole = 1.6, start-angle = 60 } },
        ]
        [[sandwiches]]
        name = "tide"
        axis = "column"
        height = 4.5
        layers = [
          { gear = "tide wheel", teeth = 24, profile-shift = 0.30, bore = 4 },
          { washer = 0.5 },
          { gear = "tide pinion", teeth = 13, profile-shift = 0.30, bore = 4 },
        ]
        [[sandwiches]]
        name = "second lay"
        axis = "second lay"
        height = 7
        layers = [
          { gear = "moon lay", teeth = 87, profile-shift = -0.30, bore = 4 },
          { washer = 0.5 },
          { gear = "moon pinion", teeth = 19, profile-shift = 0.15, bore = 4 },
        ]
        [[sandwiches]]
        name = "moon"
        axis = "column"
        height = 9.5
        layers = [{ gear = "moon wheel", teeth = 81, profile-shift = -0.15, bore = 5 }]
        [[meshes]]
        name = "day"
        gears = ["day", "day wheel"]
        [[meshes]]
        name = "tide"
        gears = ["tide driver", "tide wheel"]
        [[meshes]]
        name = "moon lay"
        gears = ["tide pinion", "moon lay"]
        [[meshes]]
        name = "moon"
        gears = ["moon pinion", "moon wheel"]
        [drive]
        sandwich = "day arbor"
        turn = "24 h"
        [[hands]]
        name = "tide hand"
        sandwich = "tide"
        turn = "24.8412 h"
        [[hands]]
        name = "moon hand"
        sandwich = "moon"
        turn = "29.530589 d"
        """;

    public const string Tiny = """
        title = "Tiny pair & a gap <set by eye>"
        [defaults]
        module = 0.3
        thickness = 0.5
        bore = 1
        [[axes]]
        name = "A"
        position = [0, 0]
        [[axes]]
        name = "B"
        position = [5.05, 0]
        [[axes]]
        name = "C"
        position = [5.05, 6.2]
        [[sandwiches]]
        name = "pinion"
        axis = "A"
        layers = [{ teeth = 12, profile-shift = 0.3, thinning = 0 }]
        [[sandwiches]]
        name = "wheel"
        axis = "B"
        layers = [{ teeth = 22, thinning = 0 }]
        [[sandwiches]]
        name = "idler"
        axis = "C"
        layers = [{ teeth = 19, thinning = 0.005 }]
        [[meshes]]
        gears = ["pinion", "wheel"]
        [[meshes]]
        gears = ["wheel", "idler"]
        [drive]
        sandwich = "pinion"
        turn = "1 h"
        """;

    /// <summary>A row of gears on a level, each in mesh with the next.</summary>
    public static string Row(int count, double module) => Chain(count, module, i => 0);

    /// <summary>A winding train of many gears that meets all sorts of directions.</summary>
    public static string Field(int count) => Chain(count, 1, i => i % 10 == 9 ? 90 : i / 10 % 2 == 0 ? 0 : 180);

    public static MechanismReport Report(string text)
    {
        Outcome<Job> job = JobReader.Parse(text, "overview.toml");
        Assert.Empty(job.Problems);
        Outcome<Mechanism> mechanism = Resolver.Resolve(job.Value!, ProfileFinder.BuiltIn);
        Assert.Empty(mechanism.Problems);
        return MechanismCheck.Of(mechanism.Value!);
    }

    private static string Chain(int count, double module, Func<int, double> direction)
    {
        int Teeth(int i) => 17 + (i * 7 % 12);
        StringBuilder text = new(string.Create(CultureInfo.InvariantCulture, $"[defaults]\nmodule = {module}\nthickness = 2\nbore = {4 * module}\n"));
        for (int i = 0; i < count; i++)
        {
            double distance = i == 0 ? 0 : (module * (Teeth(i - 1) + Teeth(i)) / 2) + (0.03 * module);
            string place = i == 0
                ? "position = [0, 0]"
                : string.Create(CultureInfo.InvariantCulture, $"from = \"axis {i - 1}\"\ndistance = {distance:R}\ndirection = {direction(i - 1)}");
            text.Append(CultureInfo.InvariantCulture, $"[[axes]]\nname = \"axis {i}\"\n{place}\n");
        }

        for (int i = 0; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"[[sandwiches]]\nname = \"wheel {i}\"\naxis = \"axis {i}\"\nlayers = [{{ teeth = {Teeth(i)} }}]\n");
        }

        for (int i = 1; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"[[meshes]]\ngears = [\"wheel {i - 1}\", \"wheel {i}\"]\n");
        }

        return text.ToString();
    }
}
