using System.Globalization;

namespace GearBlanks.Files.Drawings;

/// <summary>One tag of a DXF file: its group code, its value, the line that the value stands on.</summary>
internal readonly record struct DxfGroup(int Code, string Value, int Line)
{
    /// <exception cref="DrawingException">It is no number.</exception>
    public double Number => Numbers.TryParse(Value, out double value)
        ? value
        : throw new DrawingException(Line, Value, $"This is not a number (group {Code.ToString(CultureInfo.InvariantCulture)})", "a number with a decimal point");

    public int Whole => (int)Math.Clamp(Number, int.MinValue, int.MaxValue);
}

/// <summary>Reads the tags of a text DXF file, two lines each.</summary>
internal sealed class DxfGroups(string text)
{
    private int _at;
    private int _line;

    /// <summary>The next tag; null at the end of the text. Comments (999) are passed over.</summary>
    /// <exception cref="DrawingException">Codes and values do not alternate as they must.</exception>
    public DxfGroup? Next()
    {
        while (true)
        {
            if (Line() is not { } code)
            {
                return null;
            }

            if (!int.TryParse(code, NumberStyles.AllowLeadingSign | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out int number))
            {
                return code.Trim().Length == 0 && _at >= text.Length ? null : throw new DrawingException(
                    _line, Short(code), "This is not a DXF drawing: here a group code should stand", "a drawing saved as DXF (ASCII) or SVG");
            }

            string value = Line() ?? throw new DrawingException(_line, null, "The file ends in the middle of a tag", "the whole file: save or copy it again");
            if (number != 999)
            {
                return new DxfGroup(number, value.Trim(), _line);
            }
        }
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40];

    private string? Line()
    {
        if (_at >= text.Length)
        {
            return null;
        }

        int end = text.IndexOf('\n', _at);
        end = end < 0 ? text.Length : end;
        string line = text[_at..end];
        _at = end + 1;
        _line++;
        return line.TrimEnd('\r');
    }
}
