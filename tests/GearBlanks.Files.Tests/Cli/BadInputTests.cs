using System.Text.Json;
using GearBlanks.Files.Tests.Folders;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>
/// Whatever is wrong is told clearly, ends with 2, prints nothing on standard output (with --json: one object that says the same) and leaves
/// everything as it was. A tilde stands for the folder that the test works in.
/// </summary>
public class BadInputTests
{
    /// <summary>A command line, and pieces of what must be told.</summary>
    public static TheoryData<string, string[]> CommandLines => new()
    {
        // Verbs and options
        { "chek ~/pair.toml", ["command line: chek: There is no such verb", "Allowed: new, check, shift, explain, cut, gear, mesh", "Nearest: check"] },
        { "meshes", ["meshes: There is no such verb", "Nearest: mesh"] },
        { "CHECK ~/pair.toml", ["CHECK: There is no such verb", "Nearest: check"] },
        { "--chek", ["--chek: There is no such option of gearblanks"] },
        { "check ~/pair.toml --section wheeel", ["--section = wheeel: The job has no mesh, sandwich, gear or hand of this name", "pinion - wheel", "Nearest: wheel"] },
        { "check ~/pair.toml --section", ["--section: Its value is missing", "--section NAME"] },
        { "check ~/pair.toml --jsno", ["--jsno: There is no such option of check", "Nearest: --json"] },
        { "check --jsno", ["--jsno: There is no such option of check", "Nearest: --json"] },
        { "check --out ~/new ~/pair.toml", ["--out: There is no such option of check"] },
        { "cut ~/pair.toml --ouput ~/new", ["--ouput: There is no such option of cut", "Nearest: --out"] },
        { "mesh --modul 1 --teeth 20 40", ["--modul: There is no such option of mesh", "Nearest: --module"] },
        { "mesh --module 1 --theeth 20 40", ["--theeth: There is no such option of mesh", "Nearest: --teeth"] },
        { "gear --module 1 --teeth 20 --distance 30 --out ~/new.dxf", ["--distance: There is no such option of gear"] },
        { "gear -m 1 --teeth 20 --out ~/new.dxf", ["-m: There is no such option of gear"] },

        // Words missing
        { "new", ["FILE: It is missing"] },
        { "check", ["JOB: It is missing"] },
        { "cut ~/pair.toml", ["--out: It is missing", "--out DIR"] },
        { "cut --out ~/new", ["JOB: It is missing"] },
        { "cut ~/pair.toml --out", ["--out: Its value is missing", "--out DIR"] },
        { "cut ~/pair.toml --out --json", ["--out: Its value is missing"] },
        { "gear --module 1 --out ~/new.dxf", ["--teeth: It is missing", "--teeth Z"] },
        { "gear --module 1 --ring --teeth 40 --out ~/new.dxf", ["--rim-diameter: A ring needs the outer diameter of its rim"] },
        { "gear --module 1 --teeth 40 --rim-diameter 50 --out ~/new.dxf", ["--rim-diameter: Only a ring has this", "--ring"] },
        { "gear --module 1 --ring --teeth 40 --rim-diameter 50 --bore 4 --out ~/new.dxf", ["--bore: A ring's middle is open"] },
        { "gear --module 1 --ring --teeth 40 --rim-diameter 40 --out ~/new.dxf", ["rim-inside-root", "limit 42.5", "at least 42.501 mm"] },
        { "gear --module 1 --rack-length 50 --out ~/new.dxf", ["--back-height: A rack needs"] },
        { "gear --module 1 --rack-length 50 --teeth 20 --back-height 5 --out ~/new.dxf", ["--teeth: A straight rack does not take this option"] },
        { "gear --module 1 --teeth 20 --back-height 5 --out ~/new.dxf", ["--back-height: Only a rack has a back"] },
        { "gear --module 1 --rack-length 2 --back-height 5 --out ~/new.dxf", ["no-tooth", "use a length from 3.142"] },
        { "gear --module 1 --rack-length 20 --back-height 1 --out ~/new.dxf", ["no-back", "1.25"] },
        { "gear --module 1 --teeth 20", ["--out: It is missing", "FILE.dxf|FILE.svg|FILE.png"] },
        { "gear --module 1 --teeth --out ~/new.dxf", ["--teeth: Its value is missing"] },
        { "gear --teeth 20 --out ~/new.dxf", ["--module: Neither --module nor --diametral-pitch is given", "one of the two"] },
        { "mesh --module 1", ["--teeth: It is missing", "--teeth Z1 Z2"] },
        { "mesh --module 1 --teeth 20", ["--teeth = 20: A value is missing", "--teeth Z1 Z2"] },
        { "mesh --module 1 --teeth 20 40 --profile-shift -0.3", ["--profile-shift = -0.3: A value is missing", "X1 X2"] },

        // Words too many
        { "check ~/pair.toml ~/file", ["/file: This is one word too many"] },
        { "new ~/new.toml ~/other.toml", ["/other.toml: This is one word too many"] },
        { "gear --module 1 --teeth 20 40 --out ~/new.dxf", ["--teeth = 40: This is one value too many"] },
        { "gear --module 1 --module 2 --teeth 20 --out ~/new.dxf", ["--module = 1 2: There are too many values", "--module MM"] },
        { "mesh --module 1 --teeth 20 40 60", ["--teeth = 60: This is one value too many", "--teeth Z1 Z2"] },
        { "mesh 20 40 --module 1", ["--teeth: It is missing"] },

        // Numbers
        { "gear --module -1 --teeth 20 --out ~/new.dxf", ["--module = -1: This is too small", "from 0.05 to 50 mm", "Nearest: 0.05"] },
        { "gear --module 0 --teeth 20 --out ~/new.dxf", ["--module = 0: This is too small"] },
        { "gear --module nan --teeth 20 --out ~/new.dxf", ["--module = nan: This is not a finite number"] },
        { "gear --module -inf --teeth 20 --out ~/new.dxf", ["--module = -inf: This is not a finite number"] },
        { "gear --module 1e308 --teeth 20 --out ~/new.dxf", ["--module = 1e308: This is too large", "Nearest: 50"] },
        { "gear --module 1e999 --teeth 20 --out ~/new.dxf", ["--module = 1e999: This is not a finite number"] },
        { "gear --module 1,25 --teeth 20 --out ~/new.dxf", ["--module = 1,25: This is not a number: write a decimal point, not a comma"] },
        { "gear --module one --teeth 20 --out ~/new.dxf", ["--module = one: The unit \"one\" is not known here"] },
        { "gear --module 3cm --teeth 20 --out ~/new.dxf", ["--module = 3cm: The unit \"cm\" is not known here", "mm, in, thou"] },
        { "gear --module 1/4 --teeth 20 --out ~/new.dxf", ["--module = 1/4: The unit is missing", "\"1/4 in\""] },
        { "gear --module 1/0in --teeth 20 --out ~/new.dxf", ["--module = 1/0in: The number before the unit cannot be read"] },
        { "gear --diametral-pitch 0 --teeth 20 --out ~/new.dxf", ["--diametral-pitch = 0: This is too small", "from 0.508 to 508"] },
        { "gear --diametral-pitch 32in --teeth 20 --out ~/new.dxf", ["--diametral-pitch = 32in: This is not a number"] },
        { "gear --module 1 --teeth 3 --out ~/new.dxf", ["--teeth = 3: This is too small", "from 4 to 1000", "Nearest: 4"] },
        { "gear --module 1 --teeth 1001 --out ~/new.dxf", ["--teeth = 1001: This is too large", "Nearest: 1000"] },
        { "gear --module 1 --teeth -20 --out ~/new.dxf", ["--teeth = -20: This is too small"] },
        { "gear --module 1 --teeth 20.5 --out ~/new.dxf", ["--teeth = 20.5: This is not a whole number", "a whole number from 4 to 1000"] },
        { "gear --module 1 --teeth 99999999999 --out ~/new.dxf", ["--teeth = 99999999999: This is too large"] },
        { "gear --module 1 --teeth twenty --out ~/new.dxf", ["--teeth = twenty: This is not a number"] },
        { "gear --module 1 --teeth 20 --profile-shift 1.6 --out ~/new.dxf", ["--profile-shift = 1.6: This is too large", "from -1 to 1.5"] },
        { "gear --module 1 --teeth 20 --pressure-angle 90 --out ~/new.dxf", ["--pressure-angle = 90: This is too large", "from 5 to 45 degrees"] },
        { "gear --module 1 --teeth 20 --thinning -0.1 --out ~/new.dxf", ["--thinning = -0.1: This is too small", "Nearest: 0"] },
        { "gear --module 1 --teeth 20 --bore 0 --out ~/new.dxf", ["--bore = 0: This is too small", "over 0"] },
        { "gear --module 1 --teeth 20 --tip-round -0.1 --out ~/new.dxf", ["--tip-round = -0.1: This is too small"] },
        { "gear --module 1 --teeth 20 --tip-chamfer wide --out ~/new.dxf", ["--tip-chamfer = wide"] },
        { "gear --module 1 --teeth 20 --tip-round 0.1 --tip-chamfer 0.1 --out ~/new.dxf", ["tip-round-and-chamfer"] },
        { "gear --module 1 --teeth 20 --tip-round 0.9 --out ~/new.dxf", ["tip-round-too-wide"] },
        { "gear --module 1 --teeth 20 --tip-diameter -22 --out ~/new.dxf", ["--tip-diameter = -22: This is too small"] },
        { "gear --module 1 --teeth 20 --tolerance 0 --out ~/new.dxf", ["--tolerance = 0: This is too small", "from 0.000001 to 0.1 mm"] },
        { "gear --module 1 --teeth 20 --tolerance 1e-9 --out ~/new.dxf", ["--tolerance = 1e-9: This is too small", "Nearest: 0.000001"] },
        { "gear --module 0.3 --teeth 20 --tolerance 0.05 --out ~/new.dxf", ["--tolerance = 0.05: The tolerance is too coarse for teeth of module 0.3 mm", "Nearest: 0.015"] },
        { "cut ~/pair.toml --tolerance 0.09 --out ~/new", ["--tolerance = 0.09: The tolerance is too coarse for teeth of module 1 mm", "Nearest: 0.05"] },
        { "mesh --module 1 --teeth 20 40 --distance 0", ["--distance = 0: This is too small", "over 0 and up to 100000 mm"] },
        { "mesh --module 1 --teeth 20 40 --distance 1e6", ["--distance = 1e6: This is too large"] },
        { "mesh --module 1 --teeth 20 40 --backlash -0.04", ["--backlash = -0.04: This is too small"] },
        { "mesh --module 1 --teeth 20 40 --thinning 0.02 x", ["--thinning = x: The unit \"x\" is not known here"] },

        // Choices and contradictions
        { "cut ~/pair.toml --out ~/new --format dfx", ["--format = dfx: \"dfx\" is none of the choices", "one or more of dxf, svg, png, each once", "Nearest: dxf"] },
        { "cut ~/pair.toml --out ~/new --format dxf,pdf", ["--format = dxf,pdf: \"pdf\" is none of the choices", "Nearest: dxf"] },
        { "cut ~/pair.toml --out ~/new --format PNG,dfx", ["--format = PNG,dfx: \"PNG\" is none of the choices", "Nearest: png,dxf"] },
        { "cut ~/pair.toml --out ~/new --format svg,dxf,svg", ["--format = svg,dxf,svg: \"svg\" is named twice", "Nearest: svg,dxf"] },
        { "cut ~/pair.toml --out ~/new --format dxf,", ["--format = dxf,: A word is missing", "Nearest: dxf"] },
        { "cut ~/pair.toml --out ~/new --format ,", ["--format = ,: A word is missing"] },
        { "cut ~/pair.toml --out ~/new --lead line", ["--lead: A lead needs its length", "--lead together with --lead-length"] },
        { "cut ~/pair.toml --out ~/new --lead-length 1", ["--lead-length: No lead is asked for"] },
        { "cut ~/pair.toml --out ~/new --lead curve --lead-length 1", ["--lead = curve: This is none of the choices", "line, arc"] },
        { "cut ~/pair.toml --out ~/new --lead arc --lead-length 0", ["--lead-length = 0: "] },
        { "cut ~/pair.toml --out ~/new --lead arc --lead-length 1,5", ["--lead-length = 1,5: This is not a number: write a decimal point"] },
        { "cut ~/pair.toml --out ~/new --tabs 3", ["--tabs: Tabs need their width", "--tabs together with --tab-width"] },
        { "cut ~/pair.toml --out ~/new --tab-width 1", ["--tab-width: No tabs are asked for"] },
        { "cut ~/pair.toml --out ~/new --tabs 25 --tab-width 1", ["--tabs = 25: "] },
        { "cut ~/pair.toml --out ~/new --tabs 2.5 --tab-width 1", ["--tabs = 2.5: This is not a whole number"] },
        { "cut ~/pair.toml --out ~/new --tabs -1 --tab-width 1", ["--tabs = -1: "] },
        { "cut ~/pair.toml --out ~/new --start flank", ["--start = flank: This is none of the choices", "tip, root"] },
        { "cut ~/pair.toml --out ~/new --machine end-mill-3-175mm", ["kerf-closes-gap", "end mill to cut its sides", "use an end mill of at most", "gearblanks reach"] },
        { "cut ~/pair.toml --out ~/new --machine end-mill-1mm --kerf 0", ["--kerf: ", "kerf-contradicts-path", "leave the kerf out"] },
        { "cut ~/pair.toml --out ~/new --dxf-version r14", ["--dxf-version = r14: This is none of the choices", "r2000, r12"] },
        { "gear --module 1 --teeth 20 --pieces arc --out ~/new.dxf", ["--pieces = arc: This is none of the choices", "Nearest: arcs"] },
        { "mesh --module 1 --teeth 20 40 --tip-rule clearence", ["--tip-rule = clearence: This is none of the choices", "Nearest: clearance"] },
        { "mesh --module 1 --diametral-pitch 25.4 --teeth 20 40", ["--module: Both --module and --diametral-pitch are given"] },
        { "mesh --module 1 --teeth 20 40 --distance 30 --backlash 0.04", ["--distance: Both --distance and --backlash are given"] },
        { "mesh --module 1 --teeth 20 40 --tip-diameter 22 42 --tip-rule clearance", ["--tip-diameter: Both --tip-diameter and --tip-rule are given"] },
        { "mesh --module 1 --teeth 20 40 --rack iso-53-a --pressure-angle 25", ["--pressure-angle = 25: Rack iso-53-a has another pressure angle", "Nearest: 20"] },
        { "mesh --module 1 --teeth 20 40 --rack iso-53-e", ["--rack = iso-53-e: There is no rack of this name", "iso-53-a, iso-53-b", "Nearest: iso-53-a"] },
        { "mesh --module 1 --teeth 20 40 --rack ../racks/steep", ["--rack = ../racks/steep: There is no rack of this name"] },

        // Shapes that cannot exist, each by its name
        { "gear --module 1 --teeth 8 --thinning 1.5 --out ~/new.dxf", ["gear: ", "severed", "the nearest profile shift that works is +"] },
        { "gear --module 1 --teeth 4 --profile-shift -1 --out ~/new.dxf", ["gear: The teeth are cut to the gear's centre and beyond", "no-root", "limit 0"] },
        { "gear --module 1 --teeth 30 --profile-shift -1 --thinning 1.5 --out ~/new.dxf", ["no-tooth"] },
        { "gear --module 1 --teeth 20 --thinning 1.6 --out ~/new.dxf", ["Thinning, mm, is outside what can be made", "use 0 to 1.5707"] },
        { "gear --module 1 --teeth 20 --tip-diameter 17 --out ~/new.dxf", ["The tip circle lies inside the root circle", "tip-below-root: 17, limit 17.5", "use a tip diameter of at least 18.821 mm"] },
        { "gear --module 1 --teeth 20 --tip-diameter 18 --out ~/new.dxf", ["No involute flank is left", "no-flank", "use a tip diameter of at least 18.821 mm"] },
        { "gear --module 1 --teeth 20 --pressure-angle 40 --out ~/new.dxf", ["come to a point before they reach the dedendum", "rack-pointed"] },
        { "gear --module 1 --teeth 20 --pressure-angle 30 --out ~/new.dxf", ["fillet radius", "rack-round-too-wide"] },
        { "gear --module 1 --teeth 20 --bore 18 --out ~/new.dxf", ["bore and root circle", "holes-cross", "by more than 0.25 mm"] },
        { "mesh --module 1 --teeth 8 40 --thinning 1.5 0", ["mesh: gear 1: ", "severed"] },
        { "mesh --module 1 --teeth 20 40 --distance 28", ["The base circles overlap", "no-line-of-action: 28, limit 28.190779", "these gears mesh at 30 mm"] },
        { "mesh --module 1 --teeth 30 30 --profile-shift -0.3 -0.3 --thinning 0.3 0.3", ["no-closed-distance"] },
        { "mesh --module 1 --teeth 20 40 --backlash 1e5", ["No centre distance gives so much backlash", "backlash-out-of-reach"] },

        // Files to read
        { "check ~/missing.toml", ["/missing.toml: There is no such file"] },
        { "check ~/piar.toml", ["/piar.toml: There is no such file", "Nearest: pair.toml"] },
        { "check ~/missing/pair.toml", ["/pair.toml: There is no such file"] },
        { "check ~/folder.toml", ["/folder.toml: This is a directory"] },
        { "check ~/file/pair.toml", ["/file/pair.toml: "] },
        { "check ~/binary.toml", ["/binary.toml: This is a binary file, not text"] },
        { "check ~/utf16.toml", ["/utf16.toml: This file is UTF-16 text"] },
        { "check ~/latin.toml", ["/latin.toml:2: This line is not UTF-8 text"] },
        { "check ~/large.toml", ["/large.toml: This file is too large", "1 MiB"] },
        { "check ~/empty.toml", ["/empty.toml", "axes", "sandwiches", "missing"] },
        { "check ~/prose.toml", ["/prose.toml:1"] },
        { "check ~/nothing.toml", ["/nothing.toml: There is no such file"] },
        { "check ~/round.toml", ["/round.toml: "] },
        { "check /dev/null", ["/dev/null", "axes"] },
        { "cut ~/missing.toml --out ~/new", ["/missing.toml: There is no such file"] },
        { "cut ~/binary.toml --out ~/edited", ["/binary.toml: This is a binary file, not text"] },

        // Files and folders to write
        { "new ~/pair.toml", ["/pair.toml: There is a file of this name already"] },
        { "new ~/folder.toml", ["/folder.toml: "] },
        { "new ~/nothing.toml", ["/nothing.toml: nothing.toml: This is a link to nothing"] },
        { "new ~/new.txt", ["FILE = ", "A job file's name ends in .toml", "new.txt.toml"] },
        { "new ~/missing/new.toml", ["There is no folder to write this file into"] },
        { "new ~/file/new.toml", ["A part of this path is a file, not a folder"] },
        { "gear --module 1 --teeth 20 --out ~/new.step", ["--out = ", "does not say which format", ".dxf, .svg or .png"] },
        { "gear --module 1 --teeth 20 --out ~/new", ["does not say which format"] },
        { "gear --module 1 --teeth 20 --out ~/missing/new.dxf", ["There is no folder to write this file into"] },
        { "gear --module 1 --teeth 20 --out ~/file/new.dxf", ["A part of this path is a file, not a folder"] },
        { "gear --module 1 --teeth 20 --out ~/../../../../../../../missing-folder/new.dxf", ["There is no folder to write this file into"] },
        { "cut ~/pair.toml --out ~/file", ["/file: This is not a folder"] },
        { "cut ~/pair.toml --out ~/file/new", ["A part of this path is a file, not a folder"] },
        { "cut ~/pair.toml --out ~/letters", ["/letters: This folder has files in it but no manifest.json"] },
        { "cut ~/pair.toml --out ~/unlisted", ["manifest.json in this folder is not one of this program's"] },
        { "cut ~/pair.toml --out ~/edited", ["/edited", "wheel.svg"] },
        { "cut ~/pair.toml --out ~/round.toml", ["links lead in a circle"] },
        { "cut ~/pair.toml --out /", ["This is the root of a file system"] },
    };

    /// <summary>A piece of a good job, what it is spoilt to, and pieces of what must be told.</summary>
    public static TheoryData<string, string, string[]> Jobs => new()
    {
        { "teeth = 20", "teeth = \"20\"", [":17:9: sandwiches.layers.teeth = \"20\": ", "text, not a number"] },
        { "teeth = 20", "teeht = 20", [":17:1: sandwiches.layers.teeht", "Nearest: teeth"] },
        { "teeth = 20", "teeth = -20", ["sandwiches.layers.teeth = -20: ", "from 4 to 1000", "Nearest: 4"] },
        { "teeth = 20", "teeth = 0", ["sandwiches.layers.teeth = 0: "] },
        { "teeth = 20", "teeth = nan", ["sandwiches.layers.teeth = nan: "] },
        { "module = 1", "module = inf", ["defaults.module = inf: ", "not a finite number"] },
        { "module = 1", "module = 1e308", ["defaults.module = 1e308: ", "Nearest: 50"] },
        { "module = 1", "module = 1,5", [":3:"] },
        { "module = 1", "modul = 1", ["defaults.modul", "Nearest: module"] },
        { "distance = 30", "distance = \"30,5 mm\"", ["axes.distance = \"30,5 mm\": ", "decimal comma"] },
        { "position = [0, 0]", "from = \"far\"\ndistance = 1\ndirection = 0", ["axes.from", "in a circle"] },
        { "axis = \"far\"", "axis = \"near\"", ["meshes.gears", "Both gears turn on the axis \"near\""] },
        { "name = \"wheel\"", "name = \"pinion\"", ["sandwiches.name", "exists already (line 14)"] },
        { "name = \"wheel\"", "name = \"Pinion\"", ["sandwiches.name", "only by case"] },
        { "name = \"wheel\"", "name = \"../x\"", ["sandwiches.name = \"../x\": ", "does not start with a letter or digit"] },
        { "name = \"wheel\"", "name = \"C:x\"", ["sandwiches.name", "not allowed"] },
        { "name = \"wheel\"", "name = \"overview\"", ["take the name of another"] },
        { "name = \"wheel\"", "name = \"manifest\"", ["take the name of another"] },
        { "thickness = 3", "rack = \"../racks/steep\"", ["defaults.rack", "does not start with"] },
        { "module = 1", "module = 1\nrack = \"steep\"", ["racks/steep.toml:1:18: pressure-angle = 95: "] },
        { "thickness = 3", "thickness = 3\nmaterial = \"bras\"", ["defaults.material", "Nearest: brass"] },
        { "teeth = 40", "teeth = 40\nmodule = 2", [":24:1: gears", "pitch-mismatch", "module 1", "module 2", "give both gears one module"] },
        { "distance = 30", "distance = 20", [":23:1: gears", "The base circles overlap", "no-line-of-action: 20"] },
        { "teeth = 40", "teeth = 4\nprofile-shift = -1", [":21:1: teeth", "no-root"] },
        { "teeth = 40", "teeth = 40\ntip-diameter = 12", ["teeth", "tip-below-root: 12"] },
        { "teeth = 40", "teeth = 40\nbore = 38", ["teeth", "holes-cross"] },
        { "teeth = 40", "teeth = 40\nbore = 3\nbore-shape = { form = \"d\", across = 3.5 }", ["bore-shape", "flat-outside-bore: 3.5, limit 3", "up to 2.999 mm"] },
        { "teeth = 40", "teeth = 40\nbore = 3\nbore-shape = { form = \"keyway\", key-width = 3, key-depth = 1 }", ["bore-shape", "key-wider-than-bore: 3", "up to 2.999 mm"] },
        { "teeth = 40", "teeth = 40\ncrossings = { arms = 12, arm-width = 6, hub-diameter = 16, rim-width = 3, corner-radius = 1 }", ["crossings", "arms-meet", "use"] },
        { "teeth = 40", "teeth = 40\nbore = 6\nscrews = { count = 3, circle = 7, hole = 2 }", ["teeth", "holes-cross"] },
        { "thickness = 3\n", "", ["thickness"] },
        { "turn = \"1 h\"", "turn = \"0 h\"", ["drive.turn = \"0 h\": ", "out of range"] },
    };

    [Fact]
    public void The_table_is_long_enough() => Assert.True(CommandLines.Count + Jobs.Count >= 70);

    [Theory]
    [MemberData(nameof(CommandLines))]
    public void A_bad_command_line_is_refused(string words, string[] told)
    {
        using Desk desk = Desk.WithClutter();
        AssertRefused(desk, [.. words.Split(' ').Select(word => word.Replace("~", desk.Root, StringComparison.Ordinal))], told);
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_bad_job_is_refused(string good, string bad, string[] told)
    {
        Assert.Contains(good, JobTexts.Pair, StringComparison.Ordinal);
        using Desk desk = Desk.WithClutter();
        File.WriteAllText(desk["bad.toml"], JobTexts.Pair.Replace(good, bad, StringComparison.Ordinal));
        AssertRefused(desk, ["check", desk["bad.toml"]], told);
        AssertRefused(desk, ["cut", desk["bad.toml"], "--out", desk["new"]], told);
        AssertRefused(desk, ["cut", desk["bad.toml"], "--out", desk["edited"], "--overwrite-edited"], told);
    }

    [Theory]
    [InlineData("new", "")]
    [InlineData("check", "")]
    [InlineData("cut", "{pair}", "--out", "")]
    [InlineData("gear", "--module", "1", "--teeth", "20", "--out", "")]
    [InlineData("gear", "--module", "", "--teeth", "20", "--out", "{new}")]
    [InlineData("check", "a\0b")]
    [InlineData("cut", "{pair}", "--out", "a\0b")]
    [InlineData("mesh", "--module", "1", "--teeth", "20 40")]
    public void Empty_words_and_words_that_no_shell_can_pass_are_refused(params string[] words)
    {
        using Desk desk = Desk.WithJob();
        AssertRefused(desk, [.. words.Select(word => word.Replace("{pair}", desk["pair.toml"], StringComparison.Ordinal).Replace("{new}", desk["new.dxf"], StringComparison.Ordinal))], []);
    }

    [Fact]
    public void No_words_at_all_show_the_help_among_the_messages()
    {
        Ran ran = Ran.Of();
        Assert.Equal((2, ""), (ran.Exit, ran.Output));
        Assert.Contains("gearblanks check dial.toml", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_may_not_be_read_or_written_is_refused()
    {
        using Desk desk = Desk.WithClutter();
        foreach (string folder in (string[])[desk.Root, desk["edited"], desk["letters"]])
        {
            File.SetUnixFileMode(folder, (UnixFileMode)0b111_101_101);
        }

        File.WriteAllText(desk["secret.toml"], JobTexts.Pair);
        File.SetUnixFileMode(desk["secret.toml"], UnixFileMode.UserRead | UnixFileMode.UserWrite);
        string[] before = desk.Seen();
        Machine.AsNobody(() =>
        {
            AssertRefused(desk, ["check", desk["secret.toml"]], ["secret.toml: This file may not be read: its permissions forbid it"]);
            AssertRefused(desk, ["cut", desk["secret.toml"], "--out", desk["new"]], ["This file may not be read"]);
            AssertRefused(desk, ["new", desk["new.toml"]], ["Permission to write here is denied"]);
            AssertRefused(desk, ["cut", desk["pair.toml"], "--out", desk["new"]], ["Permission to write here is denied"]);
            AssertRefused(desk, ["gear", "--module", "1", "--teeth", "20", "--out", desk["letters/new.svg"]], ["Permission to write here is denied"]);
        });
        Assert.Equal(before, desk.Seen());
    }

    [Fact]
    public void Several_mistakes_are_told_at_once()
    {
        Ran ran = Ran.Of("mesh", "--module", "0", "--teeth", "3", "x", "--distance", "-1");
        Assert.Equal(2, ran.Exit);
        Assert.All((string[])["--module = 0", "--teeth = 3", "--teeth = x", "--distance = -1"], piece => Assert.Contains(piece, ran.Errors, StringComparison.Ordinal));
    }

    private static void AssertRefused(Desk desk, string[] words, string[] told)
    {
        string[] before = desk.Seen();
        Ran plain = Ran.Of(words);
        Assert.True(plain.Exit == 2, plain.Told);
        Assert.Equal("", plain.Output);
        Assert.NotEqual("", plain.Errors);
        Assert.All(told, piece => Assert.Contains(piece, plain.Errors, StringComparison.Ordinal));

        Ran json = Ran.Of(["--json", .. words]);
        Assert.Equal((2, plain.Errors), (json.Exit, json.Errors));
        Assert.Equal("gearblanks.problems/1", json.Json.GetProperty("schema").GetString());
        JsonElement[] problems = [.. json.Json.GetProperty("problems").EnumerateArray()];
        Assert.Equal(plain.Errors.TrimEnd().Split('\n').Length, problems.Length);
        Assert.All(problems, problem => Assert.Contains(problem.GetProperty("message").GetString()!, plain.Errors, StringComparison.Ordinal));
        Assert.Equal(before, desk.Seen());
    }
}
