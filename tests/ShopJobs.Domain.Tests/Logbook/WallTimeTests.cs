using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>One way to write a day and a time, on every screen and in every sentence.</summary>
public class WallTimeTests
{
    private static readonly DateTime Sunday = new(2026, 11, 29, 13, 26, 5);

    [Fact]
    public void A_day_and_a_time_are_written_with_the_month_in_letters() => Assert.Equal(
        ("29 Nov 2026", "29 Nov 2026", "29 Nov 2026, 13:26", "Sunday 29 Nov 2026, 13:26", "13:26"),
        (WallTime.Day(Sunday), WallTime.Day(new DateOnly(2026, 11, 29)), WallTime.Minute(Sunday), WallTime.Weekday(Sunday), WallTime.Clock(Sunday)));

    [Fact]
    public void Today_is_left_out_and_no_other_day_is() => Assert.Equal(
        ("13:26", "29 Nov 2026, 13:26"), (WallTime.Short(Sunday, new DateOnly(2026, 11, 29)), WallTime.Short(Sunday, new DateOnly(2026, 11, 30))));

    [Fact]
    public void A_span_says_its_day_once_and_again_where_it_ends_on_another() => Assert.Equal(
        ["29 Nov 2026, 13:26", "29 Nov 2026, 13:26 to 14:10", "29 Nov 2026, 13:26 to 30 Nov 2026, 13:26"],
        [WallTime.Span(Sunday, Sunday.AddSeconds(20)), WallTime.Span(Sunday, Sunday.AddMinutes(44)), WallTime.Span(Sunday, Sunday.AddDays(1))]);
}
