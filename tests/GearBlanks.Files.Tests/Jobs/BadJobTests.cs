using GearBlanks.Files.Jobs;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Each row spoils one piece of a good pair and says what must be told of it, and where.</summary>
public class BadJobTests
{
    /// <summary>What is replaced, by what; line, column, key of the one problem; pieces of what it says.</summary>
    public static TheoryData<string, string, int, int, string, string[]> Spoilt => new()
    {
        // Keys that do not exist
        { "teeth = 20", "teeth = 20\nprofile-shfit = 0.1", 18, 1, "sandwiches.layers.profile-shfit", ["no such key", "nearest: profile-shift"] },
        { "teeth = 20", "teeht = 20", 17, 1, "sandwiches.layers.teeht", ["no such key", "value: 20", "nearest: teeth"] },
        { "thickness = 3", "Thickness = 3", 4, 1, "defaults.Thickness", ["no such key", "nearest: thickness"] },
        { "thickness = 3", "tip_diameter = 3", 4, 1, "defaults.tip_diameter", ["no such key", "one of module, diametral-pitch, rack"] },
        { "title = ", "titel = ", 1, 1, "titel", ["at the top of the file", "nearest: title"] },
        { "[drive]", "[driver]", 25, 1, "driver", ["nearest: drive"] },
        { "[defaults]", "[deafults.x]", 2, 2, "deafults", ["nearest: defaults"] },
        { "teeth = 20", "teeth = 20\nscrews = { count = 3, circle = 12, hole = 2, haed = 3 }", 18, 46, "sandwiches.layers.screws.haed", ["nearest: head"] },

        // Keys that are missing
        { "name = \"pointer\"\n", "", 28, 1, "hands.name", ["\"name\" is missing"] },
        { "axis = \"far\"\n", "", 18, 1, "sandwiches.axis", ["\"axis\" is missing"] },
        { "turn = \"1 h\"\n", "", 25, 1, "drive.turn", ["\"turn\" is missing", "24 h"] },
        { "gears = [\"pinion\", \"wheel\"]\n", "", 23, 1, "meshes.gears", ["\"gears\" is missing"] },
        { "teeth = 20", "bore = 3", 16, 1, "sandwiches.layers.teeth", ["neither \"teeth\" nor \"rack-length\" nor \"washer\""] },
        { "teeth = 20", "teeth = 20\nring = true", 16, 1, "sandwiches.layers.rim-diameter", ["needs the outer diameter of its rim"] },
        { "teeth = 20", "teeth = 20\nrim-diameter = 30", 18, 16, "sandwiches.layers.rim-diameter", ["Only a ring", "ring = true"] },
        { "teeth = 20", "teeth = 20\nring = false\nroot-fillet = 0.3", 19, 15, "sandwiches.layers.root-fillet", ["Only a ring"] },
        { "teeth = 20", "teeth = 20\nring = true\nrim-diameter = 30\nbore = 3", 20, 8, "sandwiches.layers.bore", ["no bore"] },
        { "teeth = 20", "teeth = 20\nback-height = 4", 18, 15, "sandwiches.layers.back-height", ["Only a rack"] },
        { "teeth = 20", "rack-length = 40\nback-height = 4", 27, 12, "drive.sandwich", ["slides and never turns"] },
        { "position = [0, 0]\n", "", 5, 1, "axes.position", ["place of this axis is missing"] },
        { "distance = 30\n", "", 8, 1, "axes.distance", ["\"distance\" is missing", "from with distance and direction"] },
        { "direction = 90\n", "", 8, 1, "axes.direction", ["\"direction\" is missing"] },
        { "[drive]\nsandwich = \"pinion\"\nturn = \"1 h\"\n", "", 25, 1, "hands", ["no speed without a drive"] },
        { "teeth = 20", "teeth = 20\nscrews = { count = 3, hole = 2 }", 18, 10, "sandwiches.layers.screws.circle", ["\"circle\" is missing"] },
        { "teeth = 20", "teeth = 20\nholes = [ { diameter = 1 } ]", 18, 11, "sandwiches.layers.holes.position", ["place is missing"] },

        // The wrong kind of value
        { "teeth = 20", "teeth = \"20\"", 17, 9, "sandwiches.layers.teeth", ["text, not a number", "value: \"20\"", "from 4 to 1000"] },
        { "teeth = 20", "teeth = 20.5", 17, 9, "sandwiches.layers.teeth", ["not a whole number", "nearest: 20"] },
        { "teeth = 20", "teeth = true", 17, 9, "sandwiches.layers.teeth", ["not a number"] },
        { "teeth = 20", "teeth = [20]", 17, 9, "sandwiches.layers.teeth", ["not a number"] },
        { "teeth = 20", "teeth = 20\nlettering = \"yes\"", 18, 13, "sandwiches.layers.lettering", ["neither true nor false"] },
        { "teeth = 20", "teeth = 20\nform = \"dics\"", 18, 8, "sandwiches.layers.form", ["none of the choices", "\"toothed\", \"disc\"", "nearest: disc"] },
        { "teeth = 20", "teeth = 20\nform = 1", 18, 8, "sandwiches.layers.form", ["not text"] },
        { "title = \"Bell pull\"", "title = 1979-05-27", 1, 9, "title", ["not text in quotes", "value: 1979-05-27"] },
        { "title = \"Bell pull\"", "title = \"\"", 1, 9, "title", ["text is empty"] },
        { "title = \"Bell pull\"", "title = \"Gl\u00f6ckchen\"", 1, 9, "title", ["not every drawing format"] },
        { "position = [0, 0]", "position = 0", 7, 12, "axes.position", ["not a list"] },
        { "position = [0, 0]", "position = [0, 0, 0]", 7, 12, "axes.position", ["not exactly two", "value: [0, 0, 0]"] },
        { "position = [0, 0]", "position = [0, \"a\"]", 7, 16, "axes.position", ["unit \"a\" is not known"] },
        { "[drive]", "[[drive]]", 25, 1, "drive", ["This is a list"] },
        { "[defaults]\nmodule = 1\nthickness = 3", "defaults = 3", 2, 12, "defaults", ["not a table"] },
        { "[[meshes]]", "[meshes]", 23, 1, "meshes", ["single table", "[[meshes]] with double brackets"] },
        { "gears = [\"pinion\", \"wheel\"]", "gears = [\"pinion\", 7]", 24, 20, "meshes.gears", ["not text"] },
        { "turn = \"1 h\"", "turn = 3600", 27, 8, "drive.turn", ["needs its unit", "\"24 h\""] },
        { "turn = \"1 h\"", "turn = 12:00:00", 27, 8, "drive.turn", ["not a time"] },

        // Quantities that cannot be read
        { "turn = \"1 h\"", "turn = \"1\"", 27, 8, "drive.turn", ["unit is missing"] },
        { "turn = \"1 h\"", "turn = \"1 hr\"", 27, 8, "drive.turn", ["unit \"hr\" is not known"] },
        { "turn = \"1 h\"", "turn = \"1 H\"", 27, 8, "drive.turn", ["unit \"H\" is not known", "nearest: h"] },
        { "turn = \"1 h\"", "turn = \"1,5 h\"", 27, 8, "drive.turn", ["decimal comma"] },
        { "turn = \"1 h\"", "turn = \"1e3 s\"", 27, 8, "drive.turn", ["unit \"e3 s\" is not known"] },
        { "turn = \"1 h\"", "turn = \"1/0 h\"", 27, 8, "drive.turn", ["cannot be read"] },
        { "turn = \"1 h\"", "turn = \"-1 h\"", 27, 8, "drive.turn", ["out of range"] },
        { "turn = \"1 h\"", "turn = \"0 h\"", 27, 8, "drive.turn", ["out of range"] },
        { "turn = \"1 h\"", "turn = \"1000001 d\"", 27, 8, "drive.turn", ["out of range", "1000000 d"] },
        { "turn = \"1 h\"", "turn = \"0.00000000000000000000000000000000000000000000001 h\"", 27, 8, "drive.turn", ["too long"] },
        { "distance = 30", "distance = \"30\"", 11, 12, "axes.distance", ["unit is missing"] },
        { "distance = 30", "distance = \"30 cm\"", 11, 12, "axes.distance", ["unit \"cm\" is not known", "mm, in, thou"] },
        { "distance = 30", "distance = \"1..2 mm\"", 11, 12, "axes.distance", ["cannot be read"] },

        // Numbers out of range
        { "teeth = 20", "teeth = 3", 17, 9, "sandwiches.layers.teeth", ["too small", "nearest: 4"] },
        { "teeth = 20", "teeth = 1001", 17, 9, "sandwiches.layers.teeth", ["too large", "nearest: 1000"] },
        { "teeth = 20", "teeth = -20", 17, 9, "sandwiches.layers.teeth", ["too small", "value: -20"] },
        { "teeth = 20", "teeth = 0", 17, 9, "sandwiches.layers.teeth", ["too small"] },
        { "module = 1", "module = 0", 3, 10, "defaults.module", ["too small", "nearest: 0.05"] },
        { "module = 1", "module = 50.1", 3, 10, "defaults.module", ["too large", "from 0.05 to 50 mm"] },
        { "module = 1", "module = nan", 3, 10, "defaults.module", ["not a finite number", "value: nan"] },
        { "module = 1", "module = -inf", 3, 10, "defaults.module", ["not a finite number"] },
        { "module = 1", "module = 1e308", 3, 10, "defaults.module", ["too large", "value: 1e308"] },
        { "module = 1", "module = 1e999", 3, 10, "defaults.module", ["not a finite number", "value: 1e999"] },
        { "module = 1", "module = \"3 in\"", 3, 10, "defaults.module", ["too large"] },
        { "module = 1", "diametral-pitch = 0", 3, 19, "defaults.diametral-pitch", ["too small"] },
        { "thickness = 3", "thickness = -3", 4, 13, "defaults.thickness", ["too small", "over 0 and up to 1000 mm"] },
        { "thickness = 3", "thickness = 0", 4, 13, "defaults.thickness", ["too small"] },
        { "thickness = 3", "thinning = -0.01", 4, 12, "defaults.thinning", ["too small", "nearest: 0"] },
        { "teeth = 20", "teeth = 20\nprofile-shift = 1.6", 18, 17, "sandwiches.layers.profile-shift", ["too large", "nearest: 1.5"] },
        { "teeth = 20", "teeth = 20\nprofile-shift = -1.1", 18, 17, "sandwiches.layers.profile-shift", ["too small", "nearest: -1"] },
        { "direction = 90", "direction = 361", 12, 13, "axes.direction", ["too large", "degrees"] },
        { "teeth = 20", "teeth = 20\nscrews = { count = 0, circle = 12, hole = 2 }", 18, 20, "sandwiches.layers.screws.count", ["too small", "nearest: 1"] },
        { "position = [0, 0]", "position = [0, 1e308]", 7, 16, "axes.position", ["too large"] },

        // Keys that do not go together
        { "module = 1", "module = 1\ndiametral-pitch = 25", 4, 19, "defaults.diametral-pitch", ["module is given already"] },
        { "position = [0, 0]", "position = [0, 0]\ndistance = 3", 8, 12, "axes.distance", ["has a position already"] },
        { "teeth = 20", "teeth = 20\nwasher = 1", 17, 9, "sandwiches.layers.teeth", ["washer takes no other key"] },
        { "teeth = 20", "teeth = 20\nscrews = { count = 3, circle = 12, hole = 2, head = 1 }", 18, 53, "sandwiches.layers.screws.head", ["smaller than their holes", "nearest: 2"] },
        { "teeth = 20", "teeth = 20\nholes = [ { diameter = 1, position = [1, 1], radius = 2 } ]", 18, 55, "sandwiches.layers.holes.radius", ["given already"] },
        { "gears = [\"pinion\", \"wheel\"]", "gears = [\"pinion\", \"wheel\"]\nsplit = [0.5, 0.6]", 25, 9, "meshes.split", ["do not add up to 1", "nearest: [0.5, 0.5]"] },
        { "teeth = 20", "teeth = 20\n[[sandwiches.layers]]\ngear = \"upper\"\nteeth = 12", 16, 1, "sandwiches.layers.gear", ["needs its own name"] },

        // Bores that are not round
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"two-flat\", across = 2.5 }", 19, 23, "sandwiches.layers.bore-shape.form", ["none of the choices", "\"d\", \"two-flats\", \"hexagon\", \"keyway\"", "nearest: two-flats"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { across = 2.5 }", 19, 14, "sandwiches.layers.bore-shape.form", ["\"form\" is missing"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"d\" }", 19, 14, "sandwiches.layers.bore-shape.across", ["size across is missing", "for the form \"d\""] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"two-flats\", accross = 2.5 }", 19, 36, "sandwiches.layers.bore-shape.accross", ["no such key", "nearest: across"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"d\", across = 2.5, key-width = 1 }", 19, 54, "sandwiches.layers.bore-shape.key-width", ["\"d\" has no keyway", "across, corner-radius and angle"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"keyway\", across = 3.5 }", 19, 14, "sandwiches.layers.bore-shape.key-width", ["width of the keyway is missing", "either key-depth or across"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"keyway\", key-width = 1 }", 19, 14, "sandwiches.layers.bore-shape.key-depth", ["depth of the keyway is missing"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"keyway\", key-width = 1, across = 3.5, key-depth = 0.5 }", 19, 74, "sandwiches.layers.bore-shape.key-depth", ["given already"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"hexagon\", across = 5 }", 18, 8, "sandwiches.layers.bore", ["no diameter", "across alone"] },
        { "teeth = 20", "teeth = 20\nbore-shape = { form = \"d\", across = 2.5 }", 16, 1, "sandwiches.layers.bore", ["needs the diameter of its round"] },
        { "teeth = 20", "teeth = 20\nbore = 0\nbore-shape = { form = \"d\", across = 2.5 }", 18, 8, "sandwiches.layers.bore", ["no bore to give the form"] },
        { "teeth = 20", "teeth = 20\nbore = 3\nbore-shape = { form = \"d\", across = 2.5, corner-radius = -1 }", 19, 58, "sandwiches.layers.bore-shape.corner-radius", ["too small", "nearest: 0"] },
        { "thickness = 3", "thickness = 3\nbore-shape = { form = \"d\", across = 2.5 }", 2, 1, "defaults.bore", ["needs the diameter of its round"] },

        // Crossings
        { "teeth = 20", "teeth = 20\ncrossings = { arms = 1, arm-width = 3, hub-diameter = 8, rim-width = 2, corner-radius = 1 }", 18, 22, "sandwiches.layers.crossings.arms", ["too small", "from 2 to 100", "nearest: 2"] },
        { "teeth = 20", "teeth = 20\ncrossings = { arms = 5, arm-width = 3, hub-diameter = 8, rim-width = 2 }", 18, 13, "sandwiches.layers.crossings.corner-radius", ["\"corner-radius\" is missing"] },
        { "teeth = 20", "teeth = 20\ncrossings = { arms = 5, arm-width = 3, rim-width = 2, corner-radius = 1 }", 18, 13, "sandwiches.layers.crossings.hub-diameter", ["neither by its diameter nor by its width", "either hub-diameter or hub-width"] },
        { "teeth = 20", "teeth = 20\ncrossings = { arms = 5, arm-width = 3, hub-diameter = 8, hub-width = 9, rim-width = 2, corner-radius = 1 }", 18, 70, "sandwiches.layers.crossings.hub-width", ["given already"] },
        { "teeth = 20", "teeth = 20\ncrossing = { arms = 5 }", 18, 1, "sandwiches.layers.crossing", ["nearest: crossings"] },

        // Marks and part numbers
        { "teeth = 20", "teeth = 20\nmark-tooth = 21", 18, 14, "sandwiches.layers.mark-tooth", ["no tooth of this number", "from 1 to 20", "nearest: 20"] },
        { "teeth = 20", "teeth = 20\nmark-tooth = 0", 18, 14, "sandwiches.layers.mark-tooth", ["too small", "nearest: 1"] },
        { "teeth = 20", "teeth = 20\nmark-tooth = \"5\"", 18, 14, "sandwiches.layers.mark-tooth", ["text, not a number"] },
        { "teeth = 20", "teeth = 20\nmark-tooth = [5, 1, 5]", 18, 21, "sandwiches.layers.mark-tooth", ["named already", "each tooth once"] },
        { "teeth = 20", "teeth = 20\nmark-tooth = []", 18, 14, "sandwiches.layers.mark-tooth", ["list is empty", "or a list of them"] },
        { "teeth = 20", "teeth = 20\nmark = false\nmark-tooth = 5", 19, 14, "sandwiches.layers.mark-tooth", ["says that none is"] },
        { "teeth = 20", "teeth = 20\npart-number = \"AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA\"", 18, 15, "sandwiches.layers.part-number", ["too long", "at most 40 characters", "nearest: AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"] },
        { "teeth = 20", "teeth = 20\npart-number = 12", 18, 15, "sandwiches.layers.part-number", ["not text in quotes"] },

        // Names
        { "name = \"pointer\"", "name = \"../x\"", 29, 8, "hands.name", ["does not start with a letter or digit", "value: \"../x\""] },
        { "name = \"pointer\"", "name = \"a/b\"", 29, 8, "hands.name", ["not allowed"] },
        { "name = \"pointer\"", "name = \"a\\\\b\"", 29, 8, "hands.name", ["not allowed"] },
        { "name = \"pointer\"", "name = \"a\\u0000b\"", 29, 8, "hands.name", ["not allowed"] },
        { "name = \"pointer\"", "name = \"\"", 29, 8, "hands.name", ["name is empty"] },
        { "name = \"pointer\"", "name = \"h\u00e4nd\"", 29, 8, "hands.name", ["not allowed", "ASCII"] },
        { "name = \"pointer\"", "name = \"hand.\"", 29, 8, "hands.name", ["ends in a point or a space"] },
        { "name = \"pointer\"", "name = \"con\"", 29, 8, "hands.name", ["Windows keeps"] },
        { "name = \"pointer\"", "name = \"LPT1.x\"", 29, 8, "hands.name", ["Windows keeps"] },
        { "name = \"pointer\"", "name = \"12345678901234567890123456789012345678901234567890123456789012345\"", 29, 8, "hands.name", ["too long", "1 to 64"] },
        { "teeth = 40", "gear = \"wheel\"\nteeth = 40\n[[sandwiches.layers]]\ngear = \"Overview\"\nteeth = 9", 25, 8, "sandwiches.layers.gear", ["take the name of another"] },
        { "teeth = 40", "gear = \"wheel\"\nteeth = 40\n[[sandwiches.layers]]\ngear = \"../x\"\nteeth = 9", 25, 8, "sandwiches.layers.gear", ["does not start with"] },

        // Names that stand twice
        { "[drive]", "[[axes]]\nname = \"near\"\nposition = [1, 1]\n[drive]", 26, 8, "axes.name", ["exists already (line 6)"] },
        { "[drive]", "[[axes]]\nname = \"Near\"\nposition = [1, 1]\n[drive]", 26, 8, "axes.name", ["only by case", "line 6"] },
        { "teeth = 40", "teeth = 40\n[[sandwiches]]\nname = \"wheel\"\naxis = \"far\"\nlayers = [ { washer = 1 } ]", 24, 8, "sandwiches.name", ["exists already (line 19)"] },
        { "teeth = 40", "teeth = 40\n[[sandwiches.layers]]\nwasher = 1\n[[sandwiches]]\nname = \"Wheel-2\"\naxis = \"far\"\nlayers = [{ teeth = 9 }]\n[[sandwiches]]\nname = \"x\"\naxis = \"far\"\nlayers = [{ gear = \"wheel 2\", teeth = 9 }]", 32, 20, "sandwiches.layers.gear", ["only by case or by a space for a hyphen", "line 28"] },
        { "[drive]", "[[meshes]]\ngears = [\"wheel\", \"pinion\"]\n[drive]", 26, 9, "meshes.gears", ["exists already (line 23)"] },
        { "turn = \"2 h\"", "turn = \"2 h\"\n[[hands]]\nname = \"pointer\"\nsandwich = \"wheel\"\nturn = \"2 h\"", 33, 8, "hands.name", ["exists already (line 29)"] },

        // Keys and tables that stand twice
        { "teeth = 20", "teeth = 20\nteeth = 21", 18, 1, "sandwiches.layers.teeth", ["given already in line 17", "value: 21"] },
        { "[drive]", "[defaults]\nbore = 3\n[drive]", 25, 2, "defaults", ["given already in line 2"] },
        { "[drive]", "[axes]\n[drive]", 25, 2, "axes", ["double brackets, [[axes]]"] },
        { "[drive]", "[title]\n[drive]", 25, 2, "title", ["given already in line 1"] },
        { "title = \"Bell pull\"", "defaults.bore = 3", 2, 2, "defaults", ["given already in line 1"] },
        { "turn = \"1 h\"", "turn = \"1 h\"\nturn.x = 1", 28, 1, "drive.turn", ["given already in line 27"] },
        { "axis = \"near\"", "axis = \"near\"\nlayers = [ { teeth = 20 } ]", 17, 14, "sandwiches.layers", ["given already in line 16"] },
        { "teeth = 20", "teeth = 20\nscrews = { count = 3, count = 4, circle = 12, hole = 2 }", 18, 23, "sandwiches.layers.screws.count", ["given already"] },

        // References
        { "from = \"near\"", "from = \"naer\"", 10, 8, "axes.from", ["no axis of this name", "nearest: near"] },
        { "axis = \"far\"", "axis = \"fast\"", 20, 8, "sandwiches.axis", ["no axis of this name", "\"near\", \"far\""] },
        { "gears = [\"pinion\", \"wheel\"]", "gears = [\"pinion\", \"whel\"]", 24, 20, "meshes.gears", ["no gear of this name", "nearest: wheel"] },
        { "[drive]\nsandwich = \"pinion\"", "[drive]\nsandwich = \"Pinion\"", 26, 12, "drive.sandwich", ["no sandwich of this name", "nearest: pinion"] },
        { "name = \"pointer\"\nsandwich = \"wheel\"", "name = \"pointer\"\nsandwich = \"dial\"", 30, 12, "hands.sandwich", ["no sandwich of this name"] },
        { "position = [0, 0]", "from = \"far\"\ndistance = 1\ndirection = 0", 7, 8, "axes.from", ["in a circle", "\"near\" from \"far\" from \"near\""] },
        { "position = [0, 0]", "from = \"near\"\ndistance = 1\ndirection = 0", 7, 8, "axes.from", ["in a circle", "\"near\" from \"near\""] },
        { "axis = \"far\"", "axis = \"near\"", 24, 9, "meshes.gears", ["Both gears turn on the axis \"near\""] },
        { "gears = [\"pinion\", \"wheel\"]", "gears = [\"wheel\", \"wheel\"]", 24, 19, "meshes.gears", ["cannot mesh with itself"] },
        { "thickness = 3", "rack = \"iso-53-e\"", 4, 8, "defaults.rack", ["no profile of this name", "value: \"iso-53-e\"", "iso-53-a, iso-53-b", "nearest: iso-53-a"] },
        { "thickness = 3", "material = \"bras\"", 4, 12, "defaults.material", ["no profile of this name", "nearest: brass"] },
        { "thickness = 3", "limits = \"../limits/hand-assembled\"", 4, 10, "defaults.limits", ["does not start with"] },
        { "teeth = 20", "teeth = 20\nmaterial = \"brasss\"", 18, 12, "sandwiches.layers.material", ["nearest: brass"] },

        // Lists with nothing in them
        { "teeth = 20", "teeth = 20\nholes = []", 18, 9, "sandwiches.layers.holes", ["list is empty"] },
        { "[[meshes]]\ngears = [\"pinion\", \"wheel\"]", "[[meshes]]\ngears = []", 24, 9, "meshes.gears", ["list is empty"] },
    };

    /// <summary>The same for texts that are not TOML, where further lines may suffer with the first.</summary>
    public static TheoryData<string, string, int, int, string, string[]> Broken => new()
    {
        { "teeth = 20", "teeth = ", 17, 9, "teeth", ["value is missing", "TOML:"] },
        { "teeth = 20", "teeth 20", 17, 7, "", ["needs = and a value", "value: teeth 20"] },
        { "teeth = 20", "teeth = twenty", 17, 9, "teeth", ["no value"] },
        { "teeth = 20", "teeth = 99999999999999999999", 17, 9, "teeth", ["too large to read"] },
        { "teeth = 20", "teeth = 20 bore = 3", 17, 12, "teeth", ["one key a line"] },
        { "teeth = 20", "teeth = 20,5", 17, 11, "teeth", ["decimal comma"] },
        { "[drive]", "[drive", 25, 7, "", ["header is not closed"] },
        { "turn = \"2 h\"", "turn = \"2 h", 31, 12, "turn", ["not closed"] },
    };

    [Theory]
    [MemberData(nameof(Spoilt))]
    public void Spoilt_pairs_are_told_where_they_are_spoilt(string good, string bad, int line, int column, string key, string[] says)
    {
        Assert.Contains(good, JobTexts.Pair, StringComparison.Ordinal);
        var outcome = JobReader.Parse(JobTexts.Pair.Replace(good, bad, StringComparison.Ordinal), "pair.toml");
        Assert.Null(outcome.Value);
        var problem = Assert.Single(outcome.Problems);
        Assert.Equal((new Place("pair.toml", line, column), key), (problem.Place, problem.Key));
        var told = Told(problem);
        Assert.All(says, piece => Assert.Contains(piece, told, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void What_is_not_TOML_is_told_where_it_breaks(string good, string bad, int line, int column, string key, string[] says)
    {
        Assert.Contains(good, JobTexts.Pair, StringComparison.Ordinal);
        var problem = JobReader.Parse(JobTexts.Pair.Replace(good, bad, StringComparison.Ordinal), "pair.toml").Problems[0];
        Assert.Equal((new Place("pair.toml", line, column), key), (problem.Place, problem.Key));
        Assert.All(says, piece => Assert.Contains(piece, Told(problem), StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_module_is_told_at_each_gear()
    {
        var problems = JobReader.Parse(JobTexts.Pair.Replace("module = 1\n", "", StringComparison.Ordinal), "pair.toml").Problems;
        Assert.Equal([(15, "sandwiches.layers.module"), (20, "sandwiches.layers.module")], problems.Select(p => (p.Place.Line, p.Key)));
        Assert.All(problems, p => Assert.Contains("neither here nor in [defaults]", p.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_without_axes_and_sandwiches_says_so()
    {
        var problems = JobReader.Parse("title = \"x\"\naxes = []\n", "empty.toml").Problems;
        Assert.Equal(["sandwiches", "axes"], problems.Select(p => p.Key));
        Assert.Contains("missing", problems[0].Message, StringComparison.Ordinal);
        Assert.Contains("empty", problems[1].Message, StringComparison.Ordinal);
        Assert.Equal(2, JobReader.Parse("", "empty.toml").Problems.Length);
    }

    [Fact]
    public void All_problems_come_at_once_and_in_order()
    {
        var text = JobTexts.Pair
            .Replace("teeth = 20", "teeth = 2", StringComparison.Ordinal)
            .Replace("\"1 h\"", "\"1 hour\"", StringComparison.Ordinal)
            .Replace("thickness = 3", "thicknes = 3\nrack = \"iso\"", StringComparison.Ordinal)
            .Replace("from = \"near\"", "from = \"nea\"", StringComparison.Ordinal)
            .Replace("gears = [\"pinion\", \"wheel\"]", "gears = [\"pinon\", \"weel\"]\ngears = 1", StringComparison.Ordinal);
        var problems = JobReader.Parse(text, "pair.toml").Problems;
        Assert.Equal(
            [
                (4, "defaults.thicknes"), (5, "defaults.rack"), (11, "axes.from"), (18, "sandwiches.layers.teeth"), (25, "meshes.gears"),
                (25, "meshes.gears"), (26, "meshes.gears"), (29, "drive.turn"),
            ],
            problems.Select(p => (p.Place.Line, p.Key)));
    }

    [Fact]
    public void Several_errors_of_syntax_come_at_once()
    {
        var problems = JobReader.Parse("title = \nmodule 3\nok = 1\nx = 'a\n", "bad.toml").Problems;
        Assert.Equal([1, 2, 4], problems.Select(p => p.Place.Line));
        Assert.All(problems, p => Assert.Contains("(TOML: ", p.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_flood_of_problems_is_cut_short_with_a_word()
    {
        var text = string.Concat(Enumerable.Range(0, 5000).Select(i => $"k{i} = {i}\n"));
        var problems = JobReader.Parse(text, "flood.toml").Problems;
        Assert.Equal(101, problems.Length);
        Assert.Contains("More problems follow", problems[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_and_strange_text_is_shown_short_and_on_one_line()
    {
        var problem = JobReader.Parse($"\"a\\u001b[31m\\n\" = \"{new string('x', 9000)}\"\n{JobTexts.Pair}", "x.toml").Problems.Single();
        Assert.True(problem.Value!.Length < 100);
        Assert.DoesNotContain(problem.Key, char.IsControl);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a=")]
    [InlineData("[{a=")]
    [InlineData("[ \"]\", ")]
    [InlineData("[ ']', ")]
    [InlineData("[ \"\"\"\n]]]\"\"\", ")]
    [InlineData("[ # ]\n")]
    [InlineData("[\"\\\"]\",")]
    public void Deep_nesting_is_refused_without_harm(string opening)
    {
        var outcome = JobReader.Parse("title = " + string.Concat(Enumerable.Repeat(opening, 50000)), "deep.toml");
        Assert.Contains(outcome.Problems, p => p.Message.Contains("nested too deep", StringComparison.Ordinal) || p.Message.Contains("depth", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a = \"\\")]
    [InlineData("a = \"\\u12")]
    [InlineData("a = \"\\U0010")]
    [InlineData("a = \"\"\"\\")]
    [InlineData("\"\\")]
    [InlineData("[\"\\")]
    [InlineData("\\")]
    [InlineData("a = 0x")]
    [InlineData("a = 1e")]
    [InlineData("a = 07:3")]
    public void A_text_that_ends_in_the_middle_is_refused(string text) => Assert.NotEmpty(JobReader.Parse(text, "end.toml").Problems);

    // As much as a job file may hold: what takes time for each pair of them would take minutes.
    [Theory]
    [InlineData("\"")]
    [InlineData("'")]
    [InlineData("\"\\")]
    [InlineData("a.")]
    [InlineData("a=")]
    [InlineData("[a]")]
    [InlineData("a=1\n")]
    [InlineData("\\")]
    public void A_mebibyte_of_the_same_is_refused_without_harm(string piece) =>
        Assert.NotEmpty(JobReader.Parse(string.Concat(Enumerable.Repeat(piece, (1 << 20) / piece.Length)), "long.toml").Problems);

    [Fact]
    public void Brackets_in_texts_and_comments_are_no_nesting()
    {
        var text = JobTexts.Pair.Replace("Bell pull", new string('[', 60), StringComparison.Ordinal) + "# " + new string('{', 200) + "\n";
        Assert.NotNull(JobReader.Parse(text, "x.toml").Value);
    }

    [Fact]
    public void A_great_many_wrong_references_are_cut_short_too()
    {
        var axes = Enumerable.Range(0, 15000).Select(i => $"[[axes]]\nname = 'axis {i}'\nfrom = 'axes {i}'\ndistance = 1\ndirection = 0\n");
        var problems = JobReader.Parse(string.Concat(axes) + JobTexts.Pair.Replace("title = \"Bell pull\"\n", "", StringComparison.Ordinal), "x.toml").Problems;
        Assert.Equal(101, problems.Length);
        Assert.Equal("axis 0", problems[0].Nearest);
    }

    [Fact]
    public void Long_dotted_keys_do_no_harm()
    {
        var text = "a" + string.Concat(Enumerable.Repeat(".a", 20000)) + " = 1\n" + JobTexts.Pair;
        Assert.Equal("a", Assert.Single(JobReader.Parse(text, "x.toml").Problems).Key);
    }

    private static string Told(Problem p) => $"{p.Message} | value: {p.Value} | {p.Allowed} | nearest: {p.Nearest}";
}
