using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A car's condition as a workshop says it, never by the register's keys.</summary>
public class ConditionSaidTests
{
    [Theory]
    [InlineData("stand", "wheel-up", "wheel off the ground")]
    [InlineData("stand", "tyre-on-ground", "tyre just touching")]
    [InlineData("stand", "on-wheels", "on its wheels")]
    [InlineData("stand", "ride-height", "at ride height")]
    [InlineData("hub", "held", "hub held")]
    [InlineData("engine", "cold", "engine cold")]
    [InlineData("roof", "half-down", "half down")]
    public void A_condition_is_said_in_plain_words(string aspect, string value, string said) =>
        Assert.Equal(said, ConditionSaid.Of(new CarCondition(aspect, value)));

    [Fact]
    public void What_is_asked_about_is_a_thing_of_the_car() =>
        Assert.Equal(("wheel", "hub", "front left"), (ConditionSaid.Aspect("stand"), ConditionSaid.Aspect("hub"), ConditionSaid.Plain("front-left")));
}
