using System.Globalization;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Running;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Tests.Running;

public sealed class WelcomeTests
{
    [Theory]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(false, false, false)]
    public void Pins_are_printed_for_the_demo_and_before_it_is_chosen(bool toOpen, bool demo, bool printed)
    {
        using var console = new StringWriter(CultureInfo.InvariantCulture);

        Welcome.Print(console, ["http://localhost:5000"], new ShopFacts("Any shop", TimeZoneInfo.Utc, demo), toOpen);

        Assert.Contains("http://localhost:5000", console.ToString(), StringComparison.Ordinal);
        Assert.All(DemoPeople.All, person => Assert.Equal(printed, console.ToString().Contains(person.Pin, StringComparison.Ordinal)));
    }
}
