using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>One entry as it is shown.</summary>
/// <param name="Hash">Chain value up to this entry.</param>
/// <param name="At">Shop time.</param>
/// <param name="Who">Name at signing, or the person's name today where nothing was signed.</param>
/// <param name="Signed">True when it was signed with a PIN.</param>
/// <param name="Words">What it records.</param>
/// <param name="Texts">Reasons and findings kept outside it, each with what it is.</param>
/// <param name="Problems">Why it does not count.</param>
/// <param name="Standing">What became of it.</param>
public sealed record EntryLine(
    long Number,
    DateTime At,
    string Who,
    bool Signed,
    string Words,
    IReadOnlyList<(string Label, string Text)> Texts,
    IReadOnlyList<HoldReason> Problems,
    EntryStanding Standing)
{
    /// <summary>What was shown to the signer; empty where nothing was signed, or before it was kept.</summary>
    public IReadOnlyList<string> Shown { get; init; } = [];

    /// <summary>The picture of a photograph; null for any other entry.</summary>
    public ContentDigest? Photo { get; init; }

    /// <summary>What the person who looks may do with it.</summary>
    public EntryUse Use { get; init; }

    /// <summary>The typed torque, where it may be restated.</summary>
    public Domain.Fasteners.EnteredTorque? Value { get; init; }

    /// <summary>What to know before the record of an angle is voided, or its void confirmed; null elsewhere.</summary>
    public string? AboutTurn { get; init; }

    /// <summary>What to know before an opening is taken back, or that confirmed; null elsewhere.</summary>
    public string? AboutOpening { get; init; }

    /// <summary>People who may not confirm this correction: who made it and whose entry it was.</summary>
    public IReadOnlySet<PersonId> NotBy { get; init; } = new HashSet<PersonId>();

    /// <summary>Who may confirm this correction, in words; null where none waits.</summary>
    public string? MayConfirm { get; init; }

    /// <summary>True for a pull: voiding it asks whether the fastener was pulled all the same.</summary>
    public bool IsPull { get; init; }

    /// <summary>What a signature on its correction covers, as it is shown.</summary>
    public Covering Covers { get; init; } = Covering.Nothing;
}

/// <summary>What may be done with an entry.</summary>
public enum EntryUse
{
    /// <summary>Only read.</summary>
    Read,

    /// <summary>Voided or, a pull, restated.</summary>
    Correct,

    /// <summary>A correction that waits for a second person.</summary>
    Confirm,
}

/// <summary>One page of a logbook, newest first.</summary>
/// <param name="Head">Number and hash of the last entry, as <c>12:1f0c…</c>.</param>
/// <param name="Last">Number of the last entry.</param>
/// <param name="Unreadable">From which entry on it can't be read, and why; null when all of it was read.</param>
public sealed record LogbookScene(string Title, string Head, long Last, IReadOnlyList<EntryLine> Lines, string? Unreadable);
