using CsCheck;
using ShopJobs.Domain.Logbook;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>The rules that may never break, against a model written apart from the product.</summary>
public class RulesAgainstModelTests(ITestOutputHelper output)
{
    private const int Histories = 20_000;

    [Fact]
    public void Product_and_model_agree_on_every_command_of_every_history()
    {
        var tally = new Tally();
        Move.History.Sample(
            history => Assert.Null(CarHistory.Run(history, tally: tally)),
            iter: Histories,
            print: history => CarHistory.Run(history) ?? "no difference");
        output.WriteLine($"{Histories} histories{Environment.NewLine}{tally}");

        Assert.Empty(tally.Never);
        Assert.InRange(tally.Unfit, 0.3, 0.6);
    }
}
