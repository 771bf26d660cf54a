using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>What somebody is asked to sign.</summary>
/// <param name="Meaning">What the signature means, on the button, e.g. "SIGN: done by me".</param>
/// <param name="Title">What is signed, e.g. "Blue, step 9: final G1".</param>
/// <param name="Shown">The lines that are signed, exactly as they are shown.</param>
/// <param name="Command">The command the signature is for.</param>
public sealed record SignRequest(string Meaning, string Title, IReadOnlyList<string> Shown, CommandId Command)
{
    /// <summary>Only people with this right today are offered.</summary>
    public Right? Needs { get; init; }

    /// <summary>Offered alone: who signs is part of what is shown.</summary>
    public PersonId? Only { get; init; }

    /// <summary>Not offered: the doer and helpers, where a second person must sign.</summary>
    public IReadOnlySet<PersonId> NotThese { get; init; } = new HashSet<PersonId>();

    /// <summary>SHA-256 over meaning, title and lines: what the dialog shows is what is signed.</summary>
    public byte[] Digest => ShownDigest.Of(Meaning, Shown.Prepend(Title));
}
