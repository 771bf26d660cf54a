using CsCheck;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification;

/// <summary>What is asked of every specification: it closes, nothing in it is idle, and each planted defect is caught where it should be.</summary>
public abstract class SheetTests(ITestOutputHelper output)
{
    private const int Most = 2_000_000;

    [Fact]
    public void Every_reachable_state_keeps_the_rules() => Explore(new Exploring(output.WriteLine));

    [Fact]
    public void Each_planted_defect_is_caught_by_its_own_requirement() => Explore(new Planting());

    /// <summary>Hands the specification, whatever its state is, to what is to be done with it.</summary>
    private protected abstract void Explore(IExplorer explorer);

    /// <summary>Something that is done with a specification.</summary>
    private protected interface IExplorer
    {
        void Take<T>(Sheet<T> sheet, int states)
            where T : notnull;
    }

    private sealed class Exploring(Action<string> write) : IExplorer
    {
        public void Take<T>(Sheet<T> sheet, int states)
            where T : notnull
        {
            var report = sheet.Spec.Exhaustive(write, maxStates: Most);
            write(sheet.Table());
            Assert.True(report.Closed, report.ToString());
            Assert.Empty(report.NeverTriggered);
            Assert.Empty(report.NeverFired);
            Assert.Equal(0, report.DeadlockStates);
            Assert.Equal(states, report.States);
        }
    }

    private sealed class Planting : IExplorer
    {
        public void Take<T>(Sheet<T> sheet, int states)
            where T : notnull
        {
            var report = sheet.Spec.Faults(maxStates: Most, throwOnUncaught: false);
            Assert.NotEmpty(sheet.Defects);
            Assert.Equal(
                string.Join('\n', sheet.Defects.Select(defect => $"{defect.Name} -> {defect.CaughtBy}")),
                string.Join('\n', sheet.Defects.Select(defect => $"{defect.Name} -> {report.CaughtBy(defect.Name)}")));
            Assert.Empty(report.Unexercised);
        }
    }
}
