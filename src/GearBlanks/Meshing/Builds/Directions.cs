namespace GearBlanks.Meshing.Builds;

/// <summary>Directions in the plane, evenly round it and as many as a draw's first bits tell apart.</summary>
internal static class Directions
{
    private const int Bits = 8;
    private const int Count = 1 << Bits;

    private static readonly (double X, double Y)[] Known = [.. Enumerable.Range(0, Count).Select(i =>
    {
        (double sine, double cosine) = Math.SinCos(2 * Math.PI * (i + 0.5) / Count);
        return (cosine, sine);
    })];

    /// <summary>The direction of 64 random bits, by the first of them; of length 1.</summary>
    public static (double X, double Y) Of(ulong bits) => Known[bits >> (64 - Bits)];
}
