using System.Buffers;
using System.Text;

namespace GearBlanks.Files;

/// <summary>Text growing as bytes: what every writer of text files appends to.</summary>
internal sealed class ByteText
{
    // Any double fits.
    private const int RoomForNumber = Numbers.LongestText;

    // Most files fit; a rented buffer is used again by the next one, which fresh memory is not.
    private const int UsualSize = 256 * 1024;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(UsualSize);
    private int _length;

    /// <summary>The whole text, after which this one is empty.</summary>
    public byte[] ToArray()
    {
        byte[] whole = _bytes.AsSpan(0, _length).ToArray();
        ArrayPool<byte>.Shared.Return(_bytes);
        (_bytes, _length) = ([], 0);
        return whole;
    }

    public void Add(string text)
    {
        MakeRoom(Encoding.UTF8.GetMaxByteCount(text.Length));
        _length += Encoding.UTF8.GetBytes(text, _bytes.AsSpan(_length));
    }

    public void Add(ReadOnlySpan<byte> text) => text.CopyTo(Extend(text.Length));

    /// <summary>The next bytes of the text, for the caller to fill.</summary>
    public Span<byte> Extend(int length)
    {
        MakeRoom(length);
        _length += length;
        return _bytes.AsSpan(_length - length, length);
    }

    public void Add(double number, int decimals, int leastDecimals = 0)
    {
        MakeRoom(RoomForNumber);
        _length += Numbers.Format(number, _bytes.AsSpan(_length), decimals, leastDecimals);
    }

    public void Add(int number) => Add(number, 0);

    private void MakeRoom(int more)
    {
        if (_bytes.Length - _length < more)
        {
            Array.Resize(ref _bytes, Math.Max(_length + more, 2 * _bytes.Length));
        }
    }
}
