using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>What somebody is asked to sign.</summary>
/// <param name="Shown">What is signed, exactly as it is shown.</param>
/// <param name="Command">The command the signature is for.</param>
public record SignRequest(ShownLines Shown, CommandId Command)
{
    /// <summary>Takes the texts apart.</summary>
    /// <param name="meaning">What the signature means, on the button, e.g. "SIGN: done by me".</param>
    /// <param name="title">What is signed, e.g. "Blue, step 9: final G1".</param>
    /// <param name="lines">The lines that are signed.</param>
    public SignRequest(string meaning, string title, IEnumerable<string> lines, CommandId command)
        : this(new ShownLines(meaning, title, lines), command)
    {
    }

    /// <summary>Only people with this right today are offered.</summary>
    public Right? Needs { get; init; }

    /// <summary>People with this right are offered beside them.</summary>
    public Right? OrNeeds { get; init; }

    /// <summary>Offered alone: who signs is part of what is shown.</summary>
    public PersonId? Only { get; init; }

    /// <summary>Not offered: the doer and helpers, where a second person must sign.</summary>
    public IReadOnlySet<PersonId> NotThese { get; init; } = new HashSet<PersonId>();

    /// <summary>SHA-256 of what is shown.</summary>
    public byte[] Digest => Shown.Digest;
}
