using CsCheck;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Proof;

/// <summary>What is asked of every specification.</summary>
internal static class Proofs
{
    private const int MostStates = 2_000_000;

    /// <summary>The whole space is walked, is as large as it was, has no dead end, and no requirement or action stood idle.</summary>
    public static void Closes<T>(this RuleBook<T> book, ITestOutputHelper output, int states, long transitions)
    {
        var report = book.Spec.Exhaustive(output.WriteLine, MostStates);
        Assert.True(report.Closed);
        Assert.Empty(report.NeverTriggered);
        Assert.Empty(report.NeverFired);
        Assert.True(report.DeadlockStates == 0, report.DeadlockTrace);
        Assert.Equal((states, transitions), (report.States, report.Transitions));
    }

    /// <summary>Each fault is caught, and by the requirement written for it. No requirement is without a fault that it alone is for.</summary>
    public static void CatchesItsFaults<T>(this RuleBook<T> book, ITestOutputHelper output)
    {
        var report = book.Spec.Faults(output.WriteLine, MostStates);
        Assert.Empty(report.Uncaught);
        Assert.Empty(report.Inconclusive);
        Assert.Equal(book.Defects, book.Defects.Select(defect => defect with { CaughtBy = report.CaughtBy(defect.Name) ?? "nothing" }));
        Assert.Empty(report.Unexercised);
        output.WriteLine(book.Table());
    }

    /// <summary>The specification as a table of a document: rule, requirement, the rule's words, the faults it catches.</summary>
    public static string Table<T>(this RuleBook<T> book) => string.Join('\n',
    [
        $"### {book.Title}",
        "",
        "| rule | requirement | the rule's words | faults it catches |",
        "|---|---|---|---|",
        .. book.Sentences.Select(sentence =>
            $"| {sentence.Rule} | {sentence.Id} | {sentence.Words} | {Caught(book, sentence.Id)} |"),
        "",
    ]);

    private static string Caught<T>(RuleBook<T> book, string id) =>
        string.Join("; ", book.Defects.Where(defect => defect.CaughtBy == id).Select(defect => defect.Name));
}
