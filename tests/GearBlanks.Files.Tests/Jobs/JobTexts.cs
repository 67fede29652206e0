namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Good jobs that the tests read, spoil and compare.</summary>
internal static class JobTexts
{
    /// <summary>A pair, in the long style: line numbers in the tests count from its first line.</summary>
    public const string Pair =
        """
        title = "Bell pull"
        [defaults]
        module = 1
        thickness = 3
        [[axes]]
        name = "near"
        position = [0, 0]
        [[axes]]
        name = "far"
        from = "near"
        distance = 30
        direction = 90
        [[sandwiches]]
        name = "pinion"
        axis = "near"
        [[sandwiches.layers]]
        teeth = 20
        [[sandwiches]]
        name = "wheel"
        axis = "far"
        [[sandwiches.layers]]
        teeth = 40
        [[meshes]]
        gears = ["pinion", "wheel"]
        [drive]
        sandwich = "pinion"
        turn = "1 h"
        [[hands]]
        name = "pointer"
        sandwich = "wheel"
        turn = "2 h"

        """;

    /// <summary>The same pair without drive and hand, in the compact style.</summary>
    public const string Compact =
        """
        defaults = { module = 1, thickness = 3 }
        axes = [
          { name = "near", position = [0, 0] },
          { name = "far", from = "near", distance = 30, direction = 90 },
        ]
        sandwiches = [
          { name = "pinion", axis = "near", layers = [ { teeth = 20 } ] },
          { name = "wheel", axis = "far", layers = [ { teeth = 40 } ] },
        ]
        meshes = [ { gears = ["pinion", "wheel"] } ]

        """;

    /// <summary>Every key of a job, each with a value of its own.</summary>
    public const string Full =
        """
        title = "Tide and moon dial"
        [defaults]
        diametral-pitch = 32
        rack = "iso-53-b"
        material = "brass"
        machine = "drawing"
        limits = "hand-assembled"
        thickness = "1/16 in"
        bore = "3 mm"
        bore-shape = { form = "d", across = 2.5 }
        thinning = "0.5 thou"
        backlash = 0.032
        lettering = true
        mark = false
        [[axes]]
        name = "column"
        position = [1, "0.5 in"]
        [[axes]]
        name = "first lay"
        from = "column"
        distance = 32.8
        direction = 120
        [[sandwiches]]
        name = "day"
        axis = "column"
        height = 4
        [[sandwiches.layers]]
        gear = "day wheel"
        teeth = 24
        profile-shift = -0.10
        module = 0.8
        rack = "iso-53-a"
        tip-diameter = 20.5
        thinning = 0.016
        thickness = 2
        material = "steel"
        bore = 0
        screws = { count = 3, circle = 12, hole = 1.8, head = 3, start-angle = 60 }
        holes = [ { position = [4, 1], diameter = 1 }, { radius = 5, angle = 90, diameter = 2 } ]
        turned = -45
        form = "disc"
        lettering = false
        mark = true
        [[sandwiches.layers]]
        washer = 0.5
        [[sandwiches]]
        name = "lay"
        axis = "first lay"
        [[sandwiches.layers]]
        gear = "first lay wheel"
        teeth = 59
        bore = 6
        bore-shape = { form = "keyway", key-width = 2, key-depth = 1, corner-radius = 0.2, angle = 90 }
        crossings = { arms = 5, arm-width = 4, arm-width-at-rim = 3, hub-diameter = 16, rim-width = 3, corner-radius = 1, start-angle = 36 }
        mark-tooth = [1, 30]
        part-number = "TD-12"
        [[sandwiches.layers]]
        gear = "upper lay wheel"
        teeth = 57
        bore-shape = { form = "hexagon", across = 5 }
        crossings = { arms = 3, arm-width = 4, hub-width = 3, rim-width = 3, corner-radius = 0 }
        mark-tooth = 5
        [[meshes]]
        name = "first mesh"
        gears = ["day wheel", "first lay wheel"]
        measured-distance = 32.85
        backlash = 0.04
        split = [0.3, 0.7]
        [drive]
        sandwich = "day"
        turn = "24 h"
        [[hands]]
        name = "tide hand"
        sandwich = "lay"
        turn = "24.8412 h"

        """;
}
