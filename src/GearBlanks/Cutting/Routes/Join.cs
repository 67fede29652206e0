using GearBlanks.Curves;

namespace GearBlanks.Cutting.Routes;

/// <summary>Where a lead meets its contour.</summary>
/// <param name="At">The point.</param>
/// <param name="Travel">The contour's direction there, away from the lead, of length 1; in a corner the mean of both sides.</param>
/// <param name="Scrap">The middle of the scrap, square to it, of length 1.</param>
/// <param name="Opening">Half the angle that the contour leaves open on the side of the scrap, rad: a quarter turn where it is smooth.</param>
/// <param name="IsTabs">True where the contour stops for a tab.</param>
internal readonly record struct Join(Point At, Vector Travel, Vector Scrap, double Opening, bool IsTabs)
{
    /// <summary>Where a closed contour begins and ends.</summary>
    /// <param name="at">The point.</param>
    /// <param name="arriving">The contour's direction before it.</param>
    /// <param name="leaving">The contour's direction after it.</param>
    /// <param name="isRight">True where the scrap is on the right.</param>
    public static Join Of(Point at, Vector arriving, Vector leaving, bool isRight)
    {
        double turn = arriving.AngleTo(leaving);
        Vector travel = Motion.Turn(-turn / 2).Apply(leaving).Unit;
        return new Join(at, travel, isRight ? travel.TurnedRight : travel.TurnedLeft, (Math.PI + (isRight ? turn : -turn)) / 2, false);
    }

    /// <summary>Beside a tab, where the contour goes on uncut.</summary>
    public static Join BesideTab(Point at, Vector travel, bool isRight) => new(at, travel, isRight ? travel.TurnedRight : travel.TurnedLeft, Math.PI / 2, true);

    /// <summary>The same place for the way out.</summary>
    public Join Reversed => this with { Travel = -Travel };

    /// <summary>How far a point lies in the scrap, mm.</summary>
    public double HeightOf(Point point) => (point - At).Dot(Scrap);
}
