namespace GearBlanks.Meshing;

/// <summary>The side of a gear's or rack's tooth that its mate's tip corner passes.</summary>
internal abstract class ToothSide
{
    /// <summary>Distance of a corner from the side, flank or fillet, mm: negative inside the material.</summary>
    public abstract double Room(Corner corner);
}
