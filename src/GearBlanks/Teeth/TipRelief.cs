namespace GearBlanks.Teeth;

/// <summary>
/// A linear tip relief: from its start towards the tip the flank recedes into the tooth, by an amount that grows with the roll angle. Source: ISO 21771:2007,
/// clause 9 (profile modifications); from memory.
/// </summary>
/// <remarks>
/// The relieved piece is itself an involute, of a slightly smaller base circle through the start. Its deviation is exactly 0 at the start and exactly the
/// amount at the tip circle; between them it stays within a few percent of the amount from linear (the tests measure how far). A rack's is a straight line.
/// Where the relief starts there is a corner of a fraction of a degree.
/// </remarks>
/// <param name="Amount">Amount Ca at the tip circle (line, of a rack), mm, normal to the flank; 0 for none.</param>
/// <param name="Start">Where it starts: a diameter, mm; of a rack the height over the reference line, mm.</param>
public sealed record TipRelief(double Amount, double Start);
