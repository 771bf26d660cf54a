using System.Globalization;
using System.Security.Cryptography;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Look.Signing;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>An ended job that the page may leave out.</summary>
public sealed record EndedJob(JobId Id, string Title);

/// <summary>The next version as it would be issued now.</summary>
/// <param name="AsOf">Newest entry it was made from; it can't be issued once there are more.</param>
/// <param name="Ended">Ended jobs that may be left out.</param>
/// <param name="Unreadable">Why the logbook can't be read to its end; then nothing is issued.</param>
public sealed record SummaryDraft(CarId Car, WorkSummary Page, long AsOf, IReadOnlyList<EndedJob> Ended, string? Unreadable)
{
    /// <summary>Releases that are suspended now, each with what is against it.</summary>
    public IReadOnlyList<(ReleaseKind Kind, IReadOnlyList<GatheredHold> Why)> Suspended { get; init; } = [];

    /// <summary>The bytes to be issued.</summary>
    public byte[] Bytes { get; } = SummaryText.Write(Page);

    /// <summary>What is signed: the page by its digest, and the lines that matter most.</summary>
    public SignRequest ToSign(CommandId command) => new(
        "SIGN: issue this page",
        string.Create(CultureInfo.InvariantCulture, $"{Page.Car.Name}, work summary version {Page.Version}"),
        [
            Page.Replaces is { } old ? string.Create(CultureInfo.InvariantCulture, $"Replaces version {old}; that one stays as it is") : "The first version",
            Page.Open.Count == 0 ? "Nothing is open" : string.Create(CultureInfo.InvariantCulture, $"{Page.Open.Count} open on top, shown to the customer"),
            string.Create(CultureInfo.InvariantCulture, $"Made from the logbook up to entry {AsOf}"),
            $"The page as shown, SHA-256 {Convert.ToHexStringLower(SHA256.HashData(Bytes))}",
        ],
        command)
    {
        Needs = Right.Release,
    };
}
