using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Bores;

/// <summary>The hole that a gear sits on its shaft by, centred on the origin.</summary>
public abstract record Bore
{
    private protected Bore(double cornerRadius, double angle)
    {
        Refusals.RequireNotNegative("The bore's corner radius", cornerRadius);
        CornerRadius = Refusals.Corner(cornerRadius);
        Angle = angle;
    }

    /// <summary>Radius in the inner corners, mm, as the cutter leaves it; 0 for sharp ones.</summary>
    public double CornerRadius { get; }

    /// <summary>Angle from the centre line of the tooth on +X to the middle of the first flat or of the key, rad, counter-clockwise.</summary>
    public double Angle { get; }

    /// <summary>Radius of the least circle about the origin that holds it, mm.</summary>
    public abstract double OuterRadius { get; }

    /// <summary>What it is, in words that "bore" can begin, with its sizes in mm.</summary>
    public abstract string Words { get; }

    /// <summary>The narrowest way through it, mm, and what that is.</summary>
    internal abstract (string What, double Width) Narrowest { get; }

    /// <summary>Its exact contour, counter-clockwise: lines and arcs.</summary>
    public Outline Outline() => Angle == 0 ? Upright() : Upright().Moved(Motion.Turn(Angle));

    /// <summary>The contour with the middle of the first flat or of the key on +X.</summary>
    private protected abstract Outline Upright();

    /// <exception cref="GearGeometryException">The corners would take more room than there is.</exception>
    private protected void RequireCorners(double room, string of)
    {
        if (!(CornerRadius < room))
        {
            throw new GearGeometryException(
                "corners-too-wide", $"The corner radius leaves nothing straight of the {of}; corner radius, mm", CornerRadius, room,
                $"use a corner radius from 0 to {Refusals.Below(room)}");
        }
    }
}
