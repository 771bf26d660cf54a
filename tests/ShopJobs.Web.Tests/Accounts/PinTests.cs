using Microsoft.AspNetCore.Identity;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class PinTests
{
    [Fact]
    public void Random_pins_have_six_digits_and_are_not_easy()
    {
        var pins = Enumerable.Range(0, 2000).Select(_ => Pin.Random()).ToList();

        Assert.All(pins, pin => Assert.True(Pin.LooksLikeOne(pin) && !Pin.IsEasy(pin), pin));
        Assert.True(pins.Distinct().Count() > 1900, "drawn from a small set");
    }

    [Theory]
    [InlineData("123456", true)]
    [InlineData("987654", true)]
    [InlineData("111111", true)]
    [InlineData("121212", true)]
    [InlineData("112233", true)]
    [InlineData("470913", false)]
    public void Easy_pins_are_known(string pin, bool easy)
    {
        Assert.Equal(easy, Pin.IsEasy(pin));
    }

    [Theory]
    [InlineData("12345")]
    [InlineData("1234567")]
    [InlineData("12345a")]
    [InlineData("١٢٣٤٥٦")]
    [InlineData(null)]
    public void Anything_but_six_digits_is_no_pin(string? typed)
    {
        Assert.False(Pin.LooksLikeOne(typed));
    }

    [Fact]
    public void Waits_grow_from_nothing_to_an_hour_and_stay_there()
    {
        var waits = Enumerable.Range(0, 101).Select(PinDelay.OfPerson).ToList();

        Assert.Equal([TimeSpan.Zero, TimeSpan.Zero, TimeSpan.Zero, TimeSpan.FromSeconds(5), TimeSpan.FromSeconds(10), TimeSpan.FromSeconds(20)], waits[..6]);
        Assert.Equal(waits.Order(), waits);
        Assert.Equal(TimeSpan.FromHours(1), waits[^1]);
    }

    [Fact]
    public void Pin_closes_below_the_hundred_wrong_tries_that_are_allowed()
    {
        Assert.InRange(PinDelay.Closed, 3, 100); // NIST SP 800-63B rev. 3, 5.2.2: no more than 100 consecutive failed attempts
    }

    [Fact]
    public void Stored_hash_is_salted()
    {
        var hasher = new PasswordHasher<Person>();
        var person = new Person { Name = "Edda", Initials = "ED", PinHash = "" };

        Assert.NotEqual(hasher.HashPassword(person, "470913"), hasher.HashPassword(person, "470913"));
    }
}
