using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Faces;

/// <summary>The plane face that the teeth leave free: where holes, marks and lettering go.</summary>
internal abstract record Face
{
    /// <summary>Its edges.</summary>
    public abstract ImmutableArray<FaceEdge> Edges { get; }

    /// <summary>What lies between the teeth and the other side of the face (the centre, of a disc), mm.</summary>
    public abstract double Depth { get; }

    /// <summary>The face of a gear, a ring or a rack.</summary>
    public static Face Of(Toothing toothing) => toothing switch
    {
        ExternalGear gear => new DiscFace(gear.RootRadius, gear.Teeth),
        RingGear ring => new RingFace(ring.RootRadius, ring.RimRadius, ring.Teeth),
        RackBar rack => new BarFace(rack),
        _ => throw new InvalidOperationException("Teeth stand on a disc, in a ring or on a bar."),
    };

    /// <summary>Where the middle of a tooth meets the face, and the direction into the face there.</summary>
    /// <param name="tooth">1 for the tooth on +X (the leftmost, of a rack), counter-clockwise (to the right).</param>
    public abstract (Point Start, Vector Inward) ToothAt(int tooth);

    /// <summary>Places lettering clear of edges and cutouts; null where none fits.</summary>
    /// <param name="text">The text.</param>
    /// <param name="cutouts">What is cut into the face.</param>
    /// <param name="taken">Room that is taken already.</param>
    /// <param name="clearance">Least distance from edges and cutouts, mm.</param>
    public abstract PlacedLettering? Letter(string text, Cutouts cutouts, ImmutableArray<Circle> taken, double clearance);
}
