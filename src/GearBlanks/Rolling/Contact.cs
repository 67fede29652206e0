namespace GearBlanks.Rolling;

/// <summary>Where one gear stops the other.</summary>
/// <param name="Limit">The other's turn at which it is stopped, rad; of a rack its way, mm. Infinite where nothing stops it.</param>
/// <param name="FlankLimit">The same if fillets stopped nothing.</param>
/// <param name="FirstSide">Number of the first one's side.</param>
/// <param name="SecondSide">Number of the second one's side.</param>
/// <param name="FirstRadius">Radius of the place on the first one, mm.</param>
/// <param name="SecondRadius">Radius of the place on the second one, mm; of a rack its height.</param>
/// <param name="Lever">How far the second one's surface moves along the normal for each rad of its turn, mm; of a rack for each mm.</param>
/// <param name="Sunk">How far a tip reaches into the other's root circle, mm; 0 where none does.</param>
internal readonly record struct Contact(double Limit, double FlankLimit, int FirstSide, int SecondSide, double FirstRadius, double SecondRadius, double Lever, double Sunk)
{
    /// <summary>Nothing stops it, so far.</summary>
    /// <param name="sense">1 where the least turn is looked for, -1 where the greatest is.</param>
    public static Contact None(int sense) => new(sense * double.PositiveInfinity, sense * double.PositiveInfinity, 0, 0, 0, 0, 0, 0);

    /// <summary>Number of the first one's tooth, from 0.</summary>
    public int Tooth => FirstSide / 2;
}
