using System.Globalization;
using System.Text;

namespace GearBlanks.Files.Dxf;

/// <summary>Writes a DXF file's tags, a group code and a value on a line each. Knows nothing of what they mean.</summary>
internal sealed class DxfTags
{
    private const int Decimals = 9;

    // Keeps the middle of an arc as true as its ends, up to chords of a metre.
    private const int BulgeDecimals = 12;

    private readonly ByteText _text = new();

    public byte[] ToArray() => _text.ToArray();

    public void Add(int code, string value)
    {
        if (!Ascii.IsValid(value) || value.AsSpan().ContainsAnyInRange('\0', '\x1f'))
        {
            throw new ArgumentException($"'{value}' is not printable ASCII.", nameof(value));
        }

        AddCode(code);
        _text.Add(value);
        EndLine();
    }

    public void Add(int code, int value)
    {
        AddCode(code);
        _text.Add(value);
        EndLine();
    }

    public void Add(int code, double value) => Add(code, value, Decimals);

    public void AddBulge(int code, double value) => Add(code, value, BulgeDecimals);

    public void AddHandle(int code, int handle) => Add(code, HandleText(handle));

    public static string HandleText(int handle) => handle.ToString("X", CultureInfo.InvariantCulture);

    public void AddPoint(int code, double x, double y)
    {
        Add(code, x);
        Add(code + 10, y);
    }

    public void AddPoint(int code, double x, double y, double z)
    {
        AddPoint(code, x, y);
        Add(code + 20, z);
    }

    private void Add(int code, double value, int decimals)
    {
        AddCode(code);
        _text.Add(value, decimals, leastDecimals: 1);
        EndLine();
    }

    // Codes take three columns, as they always have; none of four is written.
    private void AddCode(int code)
    {
        Span<byte> line = _text.Extend(5);
        line[0] = code < 100 ? (byte)' ' : (byte)('0' + (code / 100));
        line[1] = code < 10 ? (byte)' ' : (byte)('0' + (code / 10 % 10));
        line[2] = (byte)('0' + (code % 10));
        line[3] = (byte)'\r';
        line[4] = (byte)'\n';
    }

    private void EndLine() => _text.Add("\r\n"u8);
}
