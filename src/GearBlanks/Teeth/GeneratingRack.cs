namespace GearBlanks.Teeth;

/// <summary>The rack tooth that generates one gear, and the gap of a rack: a basic rack at a module and a generating shift, in mm.</summary>
internal readonly record struct GeneratingRack
{
    // In modules: a tip narrower than this is a full round, whose radius is then the widest, so that everything meets exactly.
    private const double FullRoundBelow = 1e-9;

    // In modules: a smaller round is a sharp corner.
    private const double LeastRound = 1e-9;

    public GeneratingRack(ToothData data)
    {
        double m = data.Module;
        double alpha = data.Rack.PressureAngle;
        double dedendum = data.RackDedendum;
        (double sine, double cosine) = Math.SinCos(alpha);
        double halfTip = (Math.PI / 4 * m) - (dedendum * sine / cosine);
        double takenByRound = (1 - sine) / cosine;
        TipRound = data.Rack.FilletRadius < LeastRound ? 0 : data.Rack.FilletRadius * m;
        RequireTip(data, dedendum, halfTip, takenByRound);
        double halfLand = halfTip - (TipRound * takenByRound);
        (TipRound, CentreOffset) = halfLand < FullRoundBelow * m ? (halfTip / takenByRound, 0) : (TipRound, halfLand);
        TipHeight = (data.GeneratingShift * m) - dedendum;
        CentreHeight = TipHeight + TipRound;
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
    private void RequireTip(ToothData data, double dedendum, double halfTip, double takenByRound)
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
                FormattableString.Invariant($"use a rack with a fillet radius of at most {Math.Floor(limit * 1000) / 1000:0.###} modules"));
        }
    }
}
