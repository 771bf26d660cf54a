using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Architecture;

/// <summary>The domain's names are the trade's: no word in them says only that something is there to be useful.</summary>
public class VagueNameTests
{
    private static readonly string[] Vague = ["Service", "Services", "Helper", "Helpers", "Common", "Util", "Utils", "Manager", "Managers"];

    [Fact]
    public void No_type_of_the_domain_has_a_vague_name() =>
        Assert.DoesNotContain(
            typeof(CarState).Assembly.GetTypes().Where(type => type.Namespace?.StartsWith("ShopJobs.", StringComparison.Ordinal) == true),
            type => IsVague(type.Namespace!, type.Name));

    [Theory]
    [InlineData("ShopJobs.Domain.Helpers", "Bolt")]
    [InlineData("ShopJobs.Domain.Common.Units", "Bolt")]
    [InlineData("ShopJobs.Domain.Logbook", "EntryManager")]
    [InlineData("ShopJobs.Domain.Logbook", "EntryServices")]
    [InlineData("ShopJobs.Domain.Logbook", "EntryUtils`1")]
    public void A_vague_word_is_found_in_a_namespace_and_at_the_end_of_a_name(string name, string type) => Assert.True(IsVague(name, type));

    [Theory]
    [InlineData("ShopJobs.Domain.Logbook", "HelpersHeld")]
    [InlineData("ShopJobs.Domain.Commons", "Bolt")]
    public void A_trade_word_that_only_looks_like_one_is_left_alone(string name, string type) => Assert.False(IsVague(name, type));

    private static bool IsVague(string name, string type) =>
        name.Split('.').Any(Vague.Contains) || Vague.Any(word => type.Split('`')[0].EndsWith(word, StringComparison.Ordinal));
}
