namespace GearBlanks.Teeth;

/// <summary>
/// A linear tip relief: from its start towards the tip the flank recedes into the tooth, by an amount that grows with the roll angle. Source: ISO 21771:2007,
/// clause 9 (profile modifications); from memory.
/// </summary>
/// <remarks>
/// The relieved piece is itself an involute, of a slightly smaller base circle through the start. Its deviation is exactly 0 at the start and exactly the
/// amount at the tip circle; between them it stays within 0.5 % of the amount from linear for 0.02 modules over at least 0.3 modules of height, within 1.5 % for
/// 0.1 modules over 0.6 (measured in the tests). A rack's is a straight line. Where the relief starts there is an outside corner: for 0.02 modules over 0.6
/// modules one of two degrees.
/// </remarks>
/// <param name="Amount">Amount Ca at the tip circle (line, of a rack), mm, normal to the flank; 0 for none.</param>
/// <param name="Start">Where it starts: a diameter, mm; of a rack the height over the reference line, mm.</param>
public sealed record TipRelief(double Amount, double Start);
