using System.Text;

namespace GearBlanks.Files;

/// <summary>Text growing as bytes: what every writer of text files appends to.</summary>
internal sealed class ByteText
{
    // Enough for a 53-bit number with sign, point and twelve decimals; longer ones grow the text themselves.
    private const int RoomForNumber = 400;

    private byte[] _bytes = new byte[16 * 1024];
    private int _length;

    public byte[] ToArray() => _bytes.AsSpan(0, _length).ToArray();

    public void Add(string text)
    {
        MakeRoom(Encoding.UTF8.GetMaxByteCount(text.Length));
        _length += Encoding.UTF8.GetBytes(text, _bytes.AsSpan(_length));
    }

    public void Add(ReadOnlySpan<byte> text)
    {
        MakeRoom(text.Length);
        text.CopyTo(_bytes.AsSpan(_length));
        _length += text.Length;
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
