using System.Collections.Immutable;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>Displacements that are drawn once a build: of each post, sandwich, gear and pair of posts.</summary>
internal sealed class GearPlacing(JobConditions conditions, List<Problem> problems)
{
    private readonly Dictionary<string, int> _known = [];
    private readonly List<double> _places = [];

    /// <summary>Greatest length of each, mm or rad.</summary>
    public ImmutableArray<double> Places => [.. _places];

    private bool Leans => conditions.PostTilt > 0 || conditions.PostParallelism > 0;

    /// <summary>A share of one displacement; none where it cannot be.</summary>
    public ImmutableArray<Share> Shares(string whose, double most, double arm)
    {
        if (!(most > 0))
        {
            return [];
        }

        if (_known.TryAdd(whose, _places.Count))
        {
            _places.Add(most);
        }

        return [new Share(_known[whose], arm)];
    }

    /// <summary>How far two posts lean from one another at a height.</summary>
    public ImmutableArray<Share> Parallelism(string axes, double height) => Shares(axes, conditions.PostParallelism, height);

    /// <summary>How far a post leans at a height.</summary>
    public ImmutableArray<Share> Tilt(Axis axis, double height) => Shares($"axis {axis.Name}", conditions.PostTilt, height);

    /// <summary>The height over which a gear's post leans: to its upper or lower face, whichever is farther from the frame, mm.</summary>
    public double HeightOf(MountedGear gear, Place place, double endPlay)
    {
        if (!Leans)
        {
            return 0;
        }

        if (gear.Bottom is { } bottom)
        {
            return Math.Max(Math.Abs(bottom), Math.Abs(bottom + gear.Blank.Thickness)) + endPlay;
        }

        problems.Add(new Problem(
            place, "sandwiches.height", null, $"Posts lean, and the height of the sandwich \"{gear.Sandwich}\" over the frame is not known",
            "height for every sandwich whose gears mesh, or conditions without post-tilt and post-parallelism"));
        return 0;
    }
}
