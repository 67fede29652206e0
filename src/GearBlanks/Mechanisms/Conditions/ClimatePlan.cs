using GearBlanks.Meshing.Builds;
using Range = GearBlanks.Meshing.Builds.Range;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>The climate that is asked for, and how materials grow in it.</summary>
internal sealed class ClimatePlan
{
    private readonly JobConditions _conditions;
    private readonly List<Problem> _problems;

    public ClimatePlan(JobConditions conditions, Material? frame, List<Problem> problems)
    {
        (_conditions, _problems) = (conditions, problems);
        Frame = frame is null ? default : Of(frame, conditions.Place, "conditions.frame-material");
    }

    /// <summary>Growth of what holds the axes.</summary>
    public Growth Frame { get; }

    /// <summary>Temperature over the reference, K.</summary>
    public Range Temperature => _conditions.Climate is { } climate
        ? new Range(climate.LeastTemperature - climate.ReferenceTemperature, climate.GreatestTemperature - climate.ReferenceTemperature)
        : default;

    /// <summary>Relative humidity over the reference, per cent.</summary>
    public Range Humidity => _conditions.Climate is { } climate
        ? new Range(climate.LeastHumidity - climate.ReferenceHumidity, climate.GreatestHumidity - climate.ReferenceHumidity)
        : default;

    /// <summary>Growth of a gear; none where no climate is asked for.</summary>
    public Growth Of(MountedGear gear, Place place)
    {
        if (gear.Material is { } material)
        {
            return Of(material, place, "sandwiches.layers.material");
        }

        if (_conditions.Climate is not null)
        {
            _problems.Add(new Problem(
                place, "sandwiches.layers.material", null, $"How the gear {gear.Name} grows in the climate asked for is not known: it has no material, and [defaults] gives none",
                "the name of a material, here or as material in [defaults]"));
        }

        return default;
    }

    private Growth Of(Material material, Place place, string key)
    {
        if (_conditions.Climate is not { } climate)
        {
            return default;
        }

        Missing(climate.HasHeat && material.ThermalExpansion is null, "heat", "thermal-expansion", "temperature");
        Missing(climate.HasDamp && material.MoistureExpansion is null, "damp air", "moisture-expansion", "humidity");
        return new Growth(climate.HasHeat ? material.ThermalExpansion ?? 0 : 0, climate.HasDamp ? material.MoistureExpansion ?? 0 : 0);

        void Missing(bool isMissing, string where, string value, string asked)
        {
            if (isMissing)
            {
                _problems.Add(new Problem(
                    place, key, $"\"{material.Name}\"", $"How {material.Title} grows in {where} is not known: its profile has no {value}",
                    $"a material with {value}, a copy of this one in materials/ beside the job with the value added, or conditions without {asked}"));
            }
        }
    }
}
