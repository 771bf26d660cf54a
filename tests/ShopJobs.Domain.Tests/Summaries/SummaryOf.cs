using System.Collections.Immutable;
using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

/// <summary>The customer's page of a car of the test shop.</summary>
internal static class SummaryOf
{
    public const string Asked = "Please fit the winter wheels, and listen for the noise front left.";

    public static WorkSummary Page(this CarAtWork car, decimal? odometer = null, params JobId[] leaveOut) => SummaryMaker.Make(
        car.State,
        car.Book,
        car.As(TestPerson.Lee),
        new SummaryFacts(
            new SummaryCar("Blue", "Brennock 220", "DEMO 220"),
            new SummaryShop("Ninth Bay", "01632 960100", Demo: true),
            "LE, lead",
            car.State.Jobs.Keys.ToImmutableDictionary(job => job, _ => Asked),
            odometer,
            ["Brake discs near their limit; declined on 1 Mar 2026."],
            leaveOut.ToHashSet(),
            "a3f1",
            person => TestPerson.All.First(other => other.Id == person).Name[..2].ToUpperInvariant(),
            DateOnly.FromDateTime));

    public static string Text(this WorkSummary page) => Encoding.UTF8.GetString(SummaryText.Write(page));

    public static SummaryIssued Issue(this CarAtWork car) => (SummaryIssued)car.Do(
        TestPerson.Lee, new IssueSummary(CarAtWork.Reason, car.State.Number, CarAtWork.Shown));

    public static SummaryStanding Standing(this CarAtWork car, int version = 1) => car.State.StandingOf(
        car.As(TestPerson.Lee), car.State.Summaries.Find(summary => summary.Fact.Version == version)!, car.Book);
}
