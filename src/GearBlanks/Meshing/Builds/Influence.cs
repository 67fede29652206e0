using System.Runtime.Intrinsics;

namespace GearBlanks.Meshing.Builds;

/// <summary>What a quantity of a build acts on.</summary>
internal enum Influence
{
    /// <summary>The centre distance, along the line of centres: mm.</summary>
    Distance,

    /// <summary>The place of a centre, in any direction: from 0 to its greatest, mm.</summary>
    Place,

    /// <summary>The first gear's tooth thickness, mm (arc).</summary>
    FirstThickness,

    /// <summary>The second gear's tooth thickness, mm (arc).</summary>
    SecondThickness,

    /// <summary>The lean of an axis, in any direction: what of it lies across the line of centres crosses the teeth, and takes as much backlash as thicker teeth, mm.</summary>
    Crossing,

    /// <summary>The temperature, K over the reference.</summary>
    Temperature,

    /// <summary>The relative humidity, per cent over the reference.</summary>
    Humidity,
}

/// <summary>A quantity that differs from build to build, as one mesh feels it.</summary>
/// <param name="Name">What it is: "bore clearance".</param>
/// <param name="Of">Whose it is: a gear's, an axis's or a sandwich's name; empty where it is the mesh's own.</param>
/// <param name="On">What it acts on.</param>
/// <param name="Least">Its least value, in the unit of what it acts on.</param>
/// <param name="Most">Its greatest value.</param>
internal sealed record Quantity(string Name, string Of, Influence On, double Least, double Most)
{
    public double Middle => (Least + Most) / 2;

    public double Half => (Most - Least) / 2;
}

/// <summary>Growth of a body with the climate, mm a mm.</summary>
/// <param name="PerKelvin">Thermal expansion, 1/K.</param>
/// <param name="PerPercent">Growth with each per cent of relative humidity.</param>
internal readonly record struct Growth(double PerKelvin, double PerPercent)
{
    /// <summary>Growth in a climate, told from the reference one.</summary>
    public double At(double kelvin, double percent) => (PerKelvin * kelvin) + (PerPercent * percent);

    /// <summary>The same of several builds side by side.</summary>
    public Vector256<double> At(Vector256<double> kelvin, Vector256<double> percent) => (kelvin * PerKelvin) + (percent * PerPercent);
}
