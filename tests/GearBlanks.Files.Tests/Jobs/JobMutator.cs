using System.Buffers;
using System.Globalization;
using System.Text;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Spoils texts at random places: the same seed spoils the same text in the same way.</summary>
internal sealed class JobMutator(IReadOnlyList<string> sources, IReadOnlyList<string> fragments)
{
    // Longer ones only take longer.
    private const int MostCharacters = 40_000;

    private static readonly SearchValues<char> Figures = SearchValues.Create("0123456789.");

    private static readonly string[] Pieces =
    [
        "[", "]", "[[", "]]", "{", "}", "=", ",", ".", "\"", "'", "\"\"\"", "'''", "\n", "\r", "\r\n", "#", "\\", "\\u12", "\\U0010FFFF", "\0", "\u001b", "\t", " ", "\u00a0",
        "\uD800", "\uDC00", "\uFEFF", "\u202e", "\u00e4", "\u0301", "\U0001F600", "\u0660\u0661", "-", "+", "1e308", "-1e308", "1e-320", "1e999", "nan", "-inf", "-0.0", "0x", "0b2",
        "99999999999999999999", "0.0000000000000000000000000001", "1_000", "1__0", "1979-05-27", "1979-05-27T07:32:00Z", "07:32:00", "true", "false", "null", "{}", "[]", "[{}]", "../x", "/dev/zero",
        "\"1/0 in\"", "\"-1/3 in\"", "\"1e9999 s\"", "\"99999999999999999999/7 d\"", "\"0 h\"", "[[axes]]\n", "[[axes.x]]\n", "[drive]\n", "[sandwiches.layers]\n", "[[sandwiches.layers]]\n", "[defaults.x.y]\n",
        "gear = \"day wheel\"\n", "teeth = 4\n", "teeth = 1000\n", "module = 0.05\n", "module = 50\n", "profile-shift = -1\n", "thinning = 0.3\n", "washer = 0\n", "distance = 0\n", "turned = 1e9\n",
    ];

    /// <summary>One of the sources with one to five random changes: half of them of any kind, half of numbers only, which the reader mostly takes.</summary>
    public string Next(Random random)
    {
        string text = sources[random.Next(sources.Count)];
        bool isNumbersOnly = random.Next(2) == 0;
        for (int changes = random.Next(1, 6); changes > 0; changes--)
        {
            text = isNumbersOnly ? OtherNumber(text, random.Next(text.Length + 1), random, Near) : Change(text, random);
            text = text.Length > MostCharacters ? text[..MostCharacters] : text;
        }

        return text;
    }

    private string Change(string text, Random random)
    {
        int at = random.Next(text.Length + 1);
        int length = Math.Min(random.Next(1, 24), text.Length - at);
        return random.Next(13) switch
        {
            0 => text.Remove(at, length),
            1 => text.Insert(at, Pieces[random.Next(Pieces.Length)]),
            2 => text.Insert(random.Next(text.Length + 1), text.Substring(at, length)),
            3 => FlipBytes(text, random),
            4 => SwapLines(text, random),
            5 => SwapWords(text, random),
            6 => text.Insert(at, fragments[random.Next(fragments.Count)]),
            7 => RepeatLines(text, random),
            8 => Nest(text, at, random),
            9 or 10 => OtherNumber(text, at, random, Any),
            11 => random.Next(3) == 0 ? text[..at] + Pieces[random.Next(Pieces.Length)] : text.Insert(at, Pieces[random.Next(Pieces.Length)]),
            _ => text.Insert(at, ((char)random.Next(1, char.MaxValue)).ToString()),
        };
    }

    private static string FlipBytes(string text, Random random)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        for (int i = random.Next(1, 4); i > 0 && bytes.Length > 0; i--)
        {
            bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
        }

        return Encoding.UTF8.GetString(bytes);
    }

    private static string SwapLines(string text, Random random) => Swap(text.Split('\n'), '\n', random);

    private static string SwapWords(string text, Random random) => Swap(text.Split(' '), ' ', random);

    private static string Swap(string[] words, char between, Random random)
    {
        (int one, int other) = (random.Next(words.Length), random.Next(words.Length));
        (words[one], words[other]) = (words[other], words[one]);
        return string.Join(between, words);
    }

    private static string RepeatLines(string text, Random random)
    {
        string[] lines = text.Split('\n');
        int from = random.Next(lines.Length);
        string some = string.Join('\n', lines[from..Math.Min(lines.Length, from + random.Next(1, 12))]) + "\n";
        int times = random.Next(4) == 0 ? random.Next(2, 40) : 1;
        return text.Insert(text.IndexOf(some, StringComparison.Ordinal) is var at && at >= 0 ? at : 0, string.Concat(Enumerable.Repeat(some, times)));
    }

    private static string Nest(string text, int at, Random random)
    {
        (string open, string close) = random.Next(4) switch { 0 => ("[", "]"), 1 => ("{a=", "}"), 2 => ("[{b=", "}]"), _ => ("a.", "") };
        int depth = random.Next(8) == 0 ? random.Next(1000, 4000) : random.Next(1, 40);
        return text.Insert(at, string.Concat(Enumerable.Repeat(open, depth)) + "1" + string.Concat(Enumerable.Repeat(close, random.Next(2) * depth)));
    }

    // The number nearest behind a place becomes another one: what still is TOML gets past the parser.
    private static string OtherNumber(string text, int at, Random random, Func<string, Random, string> other)
    {
        int start = text.AsSpan(at).IndexOfAnyInRange('0', '9');
        if (start < 0)
        {
            return text;
        }

        start += at;
        int length = text.AsSpan(start).IndexOfAnyExcept(Figures);
        string number = other(length < 0 ? text[start..] : text.Substring(start, length), random);
        return string.Concat(text.AsSpan(0, start), number, length < 0 ? "" : text.AsSpan(start + length));
    }

    private static string Any(string number, Random random) => random.Next(5) switch
    {
        0 => random.Next(-3, 1200).ToString(CultureInfo.InvariantCulture),
        1 => random.NextDouble().ToString("R", CultureInfo.InvariantCulture),
        2 => Math.Pow(10, random.Next(-12, 12)).ToString("R", CultureInfo.InvariantCulture),
        3 => (random.NextDouble() * 100).ToString("0.##", CultureInfo.InvariantCulture),
        _ => new string((char)('0' + random.Next(10)), random.Next(1, 400)),
    };

    // What might as well have been written: a little more or less, up to thrice as much, a whole number of about the size, nothing.
    private static string Near(string number, Random random)
    {
        _ = double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value);
        return !number.Contains('.', StringComparison.Ordinal) && random.Next(3) > 0
            ? Math.Max(0, value + random.Next(-4, 5)).ToString(CultureInfo.InvariantCulture)
            : random.Next(6) switch
            {
                0 => (value * 3 * random.NextDouble()).ToString("0.###", CultureInfo.InvariantCulture),
                1 => (value * (1 + (0.02 * random.NextDouble()))).ToString("R", CultureInfo.InvariantCulture),
                2 => (value + ((random.NextDouble() - 0.5) * 1e-9)).ToString("R", CultureInfo.InvariantCulture),
                3 => Math.Ceiling(value * 2 * random.NextDouble()).ToString(CultureInfo.InvariantCulture),
                4 => "0",
                _ => (value * (0.9 + (0.2 * random.NextDouble()))).ToString("0.##", CultureInfo.InvariantCulture),
            };
    }
}
