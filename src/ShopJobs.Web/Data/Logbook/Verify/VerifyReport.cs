using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>
/// What verifying found. Without problems, what is there is consistent; that nothing was cut off the end or rewritten as a
/// whole is only shown by comparing a head with one kept outside the database.
/// </summary>
/// <param name="Heads">The last entry of each logbook read.</param>
/// <param name="Contents">Content rows checked against their digest.</param>
/// <param name="Erased">Content rows that were erased, as was recorded.</param>
public sealed record VerifyReport(
    IReadOnlyDictionary<LogbookId, Head> Heads,
    long Contents,
    long Erased,
    IReadOnlyList<LogbookProblem> Problems);
