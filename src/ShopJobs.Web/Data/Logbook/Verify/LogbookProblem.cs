using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>One thing that is wrong, and where.</summary>
/// <param name="Logbook">The logbook it is in; null when it is in none.</param>
/// <param name="Number">The entry it is at; null when it is at none.</param>
/// <param name="What">What is wrong, in words.</param>
public sealed record LogbookProblem(LogbookId? Logbook, long? Number, LogbookFault Fault, string What)
{
    public override string ToString() => (Logbook, Number) switch
    {
        ({ } logbook, { } number) => $"{logbook} entry {number}: {What}",
        ({ } logbook, null) => $"{logbook}: {What}",
        _ => What,
    };
}
