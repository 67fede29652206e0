using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing.Builds;

/// <summary>
/// Backlash from its definition: pitch less both tooth thicknesses on the working circles, each gear measured for itself. A thickness on a circle is
/// d_y (s / d + inv alpha - inv alpha_y), of a ring's with the other sign (ISO 21771:2007, clause 5; from memory). Nothing of the kernel's pairs is used.
/// </summary>
internal static class MeasuredBacklash
{
    public static double Of(GearPair pair, double distance, double firstGrowth, double secondGrowth, double firstThicker, double secondThicker) =>
        (pair.First, pair.Second) switch
        {
            (RackBar rack, ExternalGear gear) => OverRack(gear, rack, distance, secondGrowth, firstGrowth, secondThicker, firstThicker),
            (ExternalGear gear, RackBar rack) => OverRack(gear, rack, distance, firstGrowth, secondGrowth, firstThicker, secondThicker),
            _ => Round(pair, distance, firstGrowth, secondGrowth, firstThicker, secondThicker),
        };

    private static double Round(GearPair pair, double distance, double firstGrowth, double secondGrowth, double firstThicker, double secondThicker)
    {
        double firstBase = Base(pair.First) * (1 + firstGrowth);
        double secondBase = Base(pair.Second) * (1 + secondGrowth);
        bool isInside = pair is RingPair;
        double cosine = (isInside ? Math.Abs(secondBase - firstBase) : firstBase + secondBase) / distance;
        double first = firstBase / cosine;
        double second = secondBase / cosine;
        double pitch = Math.PI * ((first / pair.First.Teeth) + (second / pair.Second.Teeth));
        return pitch - OnCircle(pair.First, firstGrowth, firstThicker, first) - OnCircle(pair.Second, secondGrowth, secondThicker, second);
    }

    // The whole gear grown: reference circle, thickness and base circle by the same share.
    private static double OnCircle(Toothing gear, double growth, double thicker, double radius)
    {
        double diameter = gear.Teeth * gear.Module * (1 + growth);
        double thickness = (gear.ToothThickness + thicker) * (1 + growth);
        double angle = Math.Acos(Base(gear) * (1 + growth) / radius);
        double turn = (Math.Tan(gear.PressureAngle) - gear.PressureAngle) - (Math.Tan(angle) - angle);
        return 2 * radius * ((thickness / diameter) + (gear is RingGear ? -turn : turn));
    }

    private static double OverRack(ExternalGear gear, RackBar rack, double height, double growth, double rackGrowth, double thicker, double rackThicker)
    {
        double radius = gear.Teeth * gear.Module * (1 + growth) / 2;
        double over = height - radius;
        double pitch = Math.PI * gear.Module * (1 + ((growth + rackGrowth) / 2));
        double ofRack = ((rack.ToothThickness + rackThicker) * (1 + rackGrowth)) - (2 * over * Math.Tan(rack.PressureAngle));
        return pitch - OnCircle(gear, growth, thicker, radius) - ofRack;
    }

    private static double Base(Toothing gear) => gear.Teeth * gear.Module * Math.Cos(gear.PressureAngle) / 2;
}
