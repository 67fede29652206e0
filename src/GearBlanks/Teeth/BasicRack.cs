namespace GearBlanks.Teeth;

/// <summary>
/// A basic rack: the straight-sided tooth form that defines a family of gears. Proportions are in modules, ISO 53's haP, hfP and rho fP;
/// an absolute length may be added to the dedendum, as the fine-pitch inch proportions do.
/// </summary>
/// <remarks>Source of the terms: ISO 53:1998, clause 3; from memory.</remarks>
/// <param name="Name">The name it goes by.</param>
/// <param name="PressureAngle">Pressure angle, rad, 5 to 45 degrees.</param>
/// <param name="Addendum">Addendum haP, in modules; positive.</param>
/// <param name="Dedendum">Dedendum hfP, in modules; positive.</param>
/// <param name="FilletRadius">Fillet radius rho fP, in modules: the round at the tip of the generating rack; 0 or more.</param>
/// <param name="DedendumAllowance">Length added to the dedendum, mm; 0 or more.</param>
public sealed record BasicRack(
    string Name, double PressureAngle, double Addendum, double Dedendum, double FilletRadius, double DedendumAllowance = 0);
