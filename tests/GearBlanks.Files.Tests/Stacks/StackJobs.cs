namespace GearBlanks.Files.Tests.Stacks;

/// <summary>A good mechanism with everything that a stack can have; faults are planted in it.</summary>
internal static class StackJobs
{
    /// <summary>Two trains over one another on a plate, an arm that turns, and a hand over all of it.</summary>
    public const string Good =
        """
        title = "Fog bell winder"
        [defaults]
        module = 1
        thickness = 3
        bore = 4
        thickness-tolerance = 0.05

        [[axes]]
        name = "crank"
        position = [0, 0]
        spindles = [{ name = "crank rod", diameter = 4, class = "h6", bottom = -4, top = 22, turns-with = "crank" }]
        [[axes]]
        name = "lay"
        from = "crank"
        distance = 30.05
        direction = 0
        spindles = [{ name = "lay post", diameter = 4, class = "f7", bottom = 0, top = 11 }]
        [[axes]]
        name = "bell"
        from = "lay"
        distance = 35.05
        direction = 90
        spindles = [{ name = "bell post", diameter = 4, class = "f7", bottom = 0, top = 20 }]

        [[sandwiches]]
        name = "crank"
        axis = "crank"
        height = 2
        [[sandwiches.layers]]
        gear = "crank pinion"
        teeth = 20
        bore-class = "P7"
        seat = "pressed"

        [[sandwiches]]
        name = "lay"
        axis = "lay"
        height = 2
        [[sandwiches.layers]]
        gear = "lay wheel"
        teeth = 40
        bore-class = "H8"
        screws = { count = 4, circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = "down", length = 5.2, socket = 2.5 }
        [[sandwiches.layers]]
        washer = 3
        diameter = 22
        bore = 4
        bore-class = "H8"
        [[sandwiches.layers]]
        gear = "lay pinion"
        teeth = 20
        bore-class = "H8"

        [[sandwiches]]
        name = "bell"
        axis = "bell"
        height = 8.4
        [[sandwiches.layers]]
        gear = "bell wheel"
        teeth = 50
        bore-class = "H8"
        screws = { count = 5, circle = 18, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = "down", length = 5.2, socket = 2.5 }
        [[sandwiches.layers]]
        washer = 3
        diameter = 26
        bore = 4
        bore-class = "H8"
        [[sandwiches.layers]]
        washer = 0.5

        [[meshes]]
        name = "first"
        gears = ["crank pinion", "lay wheel"]
        [[meshes]]
        name = "second"
        gears = ["lay pinion", "bell wheel"]

        [[plates]]
        name = "base"
        position = [15, 20]
        length = 160
        width = 160
        bottom = -4
        thickness = 4
        holes = [{ position = [0, 0], diameter = 4 }]
        [[plates]]
        name = "cover"
        position = [15, 20]
        length = 160
        width = 160
        bottom = 24
        thickness = 2
        holes = [{ position = [0, 0], diameter = 5 }]
        [[columns]]
        name = "corner column"
        position = [-50, -50]
        diameter = 8
        bottom = 0
        top = 24

        [[arms]]
        name = "striker"
        from = "crank"
        to = "lay"
        width = 6
        bottom = 16
        thickness = 2
        bore = 4
        turns-with = "crank"

        [drive]
        sandwich = "crank"
        turn = "10 s"
        [[hands]]
        name = "tell-tale"
        sandwich = "bell"
        turn = "50 s"
        length = 20
        tail = 5
        width = 3
        height = 18.5
        thickness = 1
        bore = 4

        """;
}
