using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>
/// An odometer as people write it. The thousands marks are those of common use: point, comma, apostrophe and blank by country; the thin
/// blank alone is that of ISO 80000-1 (7.3.1). From memory, except where a source is named.
/// </summary>
public sealed class OdometerTextTests
{
    [Theory]
    [InlineData("50200", 50200)]
    [InlineData("  50200 ", 50200)]
    [InlineData("050200", 50200)]
    [InlineData("0", 0)]
    [InlineData("50,200", 50200)]
    [InlineData("50.200", 50200)]
    [InlineData("61.000", 61000)]
    [InlineData("50 200", 50200)]
    [InlineData("50\u00a0200", 50200)]
    [InlineData("50\u202f200", 50200)]
    [InlineData("50'200", 50200)]
    [InlineData("50’200", 50200)]
    [InlineData("1.234", 1234)]
    [InlineData("1,234,567", 1234567)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1,23,456", 123456)]
    [InlineData("48210,5", 48210.5)]
    [InlineData("48210.5", 48210.5)]
    [InlineData("48 210,5", 48210.5)]
    [InlineData("48.210,5", 48210.5)]
    [InlineData("48,210.5", 48210.5)]
    [InlineData("50200 km", 50200)]
    [InlineData("50.200km", 50200)]
    [InlineData("50 200 KM", 50200)]
    [InlineData("٥٠٢٠٠", 50200)]
    [InlineData("9999999", 9999999)]
    public void Every_customary_spelling_is_read(string typed, double km)
    {
        Assert.True(OdometerReading.TryParse(typed, DistanceUnit.Kilometre, out var reading, out var problem), problem);
        Assert.Equal(new OdometerReading((decimal)km, DistanceUnit.Kilometre), reading);
    }

    [Theory]
    [InlineData("12,5")]
    [InlineData("12.5")]
    [InlineData("50,20")]
    [InlineData("50,2")]
    [InlineData("999.9 km")]
    public void A_short_number_with_a_mark_is_asked_back_with_both_ways_to_read_it(string typed)
    {
        Assert.False(OdometerReading.TryParse(typed, DistanceUnit.Kilometre, out _, out var problem));
        Assert.Contains("can be read in two ways", problem, StringComparison.Ordinal);
        Assert.Contains("in whole kilometres", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.500")]
    [InlineData("50200,123")]
    [InlineData("50200,12")]
    [InlineData("50,20,0")]
    [InlineData("1,234.567")]
    [InlineData("1.234,567")]
    [InlineData("50,200.0.0")]
    [InlineData("50 2 00")]
    [InlineData("50200.")]
    [InlineData(",50200")]
    [InlineData("50..200")]
    [InlineData("50 200.300")]
    public void What_can_be_read_in_several_ways_is_not_guessed(string typed)
    {
        Assert.False(OdometerReading.TryParse(typed, DistanceUnit.Mile, out _, out var problem));
        Assert.Contains("write it in whole miles", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, "Type what the odometer shows")]
    [InlineData("   ", "Type what the odometer shows")]
    [InlineData("-5", "never below 0")]
    [InlineData("−5", "never below 0")]
    [InlineData("abc", "is no odometer")]
    [InlineData("5e4", "is no odometer")]
    [InlineData("<script>alert(1)</script>", "is no odometer")]
    [InlineData("km", "is no odometer")]
    [InlineData("50200 furlongs", "is no odometer")]
    [InlineData("10000000", "more than an odometer shows")]
    [InlineData("99999999999", "more than an odometer shows")]
    [InlineData("999999999999999999999999999999999999", "more than one way")]
    public void What_is_no_reading_says_so(string? typed, string said)
    {
        Assert.False(OdometerReading.TryParse(typed, DistanceUnit.Kilometre, out _, out var problem));
        Assert.Contains(said, problem, StringComparison.Ordinal);
        Assert.True(problem!.Length < 250);
    }

    [Theory]
    [InlineData("31,000", DistanceUnit.Mile, 31000, DistanceUnit.Mile)]
    [InlineData("31,000 km", DistanceUnit.Mile, 31000, DistanceUnit.Kilometre)]
    [InlineData("31 000 mi", DistanceUnit.Kilometre, 31000, DistanceUnit.Mile)]
    [InlineData("31000 Miles", DistanceUnit.Kilometre, 31000, DistanceUnit.Mile)]
    public void The_unit_is_the_cars_where_none_is_written(string typed, DistanceUnit car, int value, DistanceUnit unit)
    {
        Assert.True(OdometerReading.TryParse(typed, car, out var reading, out _));
        Assert.Equal(new OdometerReading(value, unit), reading);
    }

    /// <summary>1 mile is 1.609344 km exactly: NIST Special Publication 811 (2008), appendix B.8, "mile (mi)".</summary>
    [Fact]
    public void Miles_are_kept_as_entered_and_compared_in_kilometres_exactly()
    {
        var reading = new OdometerReading(31000, DistanceUnit.Mile);

        Assert.Equal(49889.664m, reading.Km);
        Assert.Equal("31000 mi", reading.ToString());
        Assert.Equal("31,000 mi", DistanceUnit.Mile.Say(reading.Km));
        Assert.Equal("49,889.7 km", DistanceUnit.Kilometre.Say(reading.Km));
    }

    [Fact]
    public void A_reading_is_never_below_nothing_or_past_the_last_digit()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdometerReading(-1, DistanceUnit.Kilometre));
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdometerReading(OdometerReading.Largest + 1, DistanceUnit.Mile));
    }
}
