namespace GearBlanks.Teeth;

/// <summary>The rack tooth that generates one gear: a basic rack at a module and a generating shift, in mm.</summary>
internal readonly record struct GeneratingRack
{
    // A tip narrower than this is a full round: its two rounds meet.
    private const double FullRoundBelow = 1e-9;

    public GeneratingRack(GearData data)
    {
        double m = data.Module;
        double alpha = data.Rack.PressureAngle;
        double dedendum = data.RackDedendum;
        (double sine, double cosine) = Math.SinCos(alpha);
        TipRound = data.Rack.FilletRadius * m;
        RequireTip(data, dedendum, (Math.PI / 4 * m) - (dedendum * sine / cosine), (1 - sine) / cosine);
        TipHeight = (data.GeneratingShift * m) - dedendum;
        CentreHeight = TipHeight + TipRound;
        double halfLand = (Math.PI / 4 * m) - (dedendum * sine / cosine) - (TipRound * (1 - sine) / cosine);
        CentreOffset = halfLand < FullRoundBelow * m ? 0 : halfLand;
    }

    /// <summary>Radius of the round at the rack tooth's tip, mm.</summary>
    public double TipRound { get; }

    /// <summary>Height of the rack tooth's tip over the rolling line, mm, outward positive.</summary>
    public double TipHeight { get; }

    /// <summary>Height of the round's centre over the rolling line, mm, outward positive.</summary>
    public double CentreHeight { get; }

    /// <summary>Distance of the round's centre from the rack tooth's centre line, mm: 0 for a full round.</summary>
    public double CentreOffset { get; }

    // The tip's half width without its round, and how much of it each mm of round takes.
    private void RequireTip(GearData data, double dedendum, double halfTip, double takenByRound)
    {
        double m = data.Module;
        if (halfTip < 0)
        {
            double limit = Math.PI / 4 * m / Math.Tan(data.Rack.PressureAngle);
            throw new GearGeometryException(
                "rack-pointed", $"The teeth of rack {data.Rack.Name} come to a point before they reach the dedendum, mm",
                dedendum, limit, "use a smaller dedendum or pressure angle");
        }

        if (halfTip - (TipRound * takenByRound) < -FullRoundBelow * m)
        {
            double limit = halfTip / takenByRound / m;
            throw new GearGeometryException(
                "rack-round-too-wide", $"The fillet radius of rack {data.Rack.Name} is wider than the tip of its tooth, modules",
                data.Rack.FilletRadius, limit,
                System.FormattableString.Invariant($"use a rack with a fillet radius of at most {Math.Floor(limit * 1000) / 1000:0.###} modules"));
        }
    }
}
