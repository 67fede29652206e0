using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Blocks of strokes, each shifted: many places are tried for one block, so it is moved only once it has found its own.</summary>
internal sealed class StrokeSet(params ImmutableArray<(StrokeBlock Block, Vector Shift)> blocks)
{
    /// <summary>One block where it is.</summary>
    internal StrokeSet(ImmutableArray<ArcPath> strokes)
        : this((new StrokeBlock(strokes), default))
    {
    }

    /// <summary>True where no stroke comes nearer to a point than a distance, mm.</summary>
    internal bool IsClearOf(Point point, double distance)
    {
        foreach ((StrokeBlock block, Vector shift) in blocks)
        {
            if (!block.IsClearOf(point - shift, distance))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True where every stroke stays within a radius about the origin, mm.</summary>
    internal bool IsWithin(double radius)
    {
        foreach ((StrokeBlock block, Vector shift) in blocks)
        {
            if (!block.IsWithin(default(Point) - shift, radius))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The strokes turned about the origin by an angle, rad.</summary>
    internal ImmutableArray<ArcPath> Turned(double angle)
    {
        Motion turn = Motion.Turn(angle);
        return [.. blocks.SelectMany(pair => pair.Block.Strokes.Select(stroke => stroke.Moved(Motion.Shift(pair.Shift).Then(turn))))];
    }
}
