using CsCheck;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Trains;

/// <summary>Moments against the calendar of the runtime library.</summary>
public sealed class MomentTests
{
    [Fact]
    public void Seconds_agree_with_the_calendar_of_the_library() => Gen.Int[0, (int)(DateTime.MaxValue - DateTime.MinValue).TotalDays].Sample(
        days =>
        {
            DateTime date = DateTime.MinValue.AddDays(days);
            Assert.Equal((date - DateTime.UnixEpoch).TotalSeconds, Moment.Of("", date.Year, date.Month, date.Day, 0, 0).Seconds.ToDouble());
            Assert.Equal(DateTime.DaysInMonth(date.Year, date.Month), Moment.DaysIn(date.Year, date.Month));
        },
        iter: 5000, threads: 1);

    [Fact]
    public void Local_time_ahead_of_UTC_is_earlier() =>
        Assert.Equal(-3600, Moment.Of("", 1970, 1, 1, 0, 3600).Seconds.ToDouble());

    [Fact]
    public void Without_an_offset_it_is_UTC_and_says_so()
    {
        Assert.True(Moment.Of("", 1970, 1, 1, 5, null).IsTakenForUtc);
        Assert.Equal(5, Moment.Of("", 1970, 1, 1, 5, null).Seconds.ToDouble());
        Assert.False(Moment.Of("", 1970, 1, 1, 5, 0).IsTakenForUtc);
    }
}
