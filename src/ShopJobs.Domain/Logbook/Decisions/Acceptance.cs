using System.Globalization;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Words of somebody outside the shop that others rely on: a customer's, a maker's or an engineer's acceptance. Who said them, when and
/// how is asked; all of it is kept as one text beside the entry.
/// </summary>
/// <param name="Who">Who said it, by name.</param>
/// <param name="On">The day on which it was said; null while none is given.</param>
/// <param name="How">How it was said; null while that is not chosen.</param>
/// <param name="KeptAt">Where the writing is kept; asked of what was written.</param>
/// <param name="Words">What was said.</param>
public sealed record Acceptance(string Who, DateOnly? On, SaidHow? How, string KeptAt, string Words)
{
    /// <summary>The text as it is kept, by digest.</summary>
    public ContentDigest Kept { get; init; }

    /// <summary>What is still to be said of it before anybody relies on it; empty when nothing is.</summary>
    /// <param name="today">The shop's day: nobody has said anything tomorrow.</param>
    /// <param name="inWriting">Only what was written counts.</param>
    public IReadOnlyList<HoldPoint> Lacks(DateOnly today, bool inWriting)
    {
        IEnumerable<(HoldReason Reason, bool IsSo)> asked =
        [
            (HoldReason.AcceptanceWho, Letters(Who) < 2),
            (HoldReason.AcceptanceWhen, On is not { } day || day > today),
            (HoldReason.AcceptanceHow, How is null),
            (HoldReason.AcceptanceNotWritten, inWriting && How is (SaidHow.InPerson or SaidHow.ByTelephone)),
            (HoldReason.AcceptanceKept, How == SaidHow.InWriting && Letters(KeptAt) < 2),
            (HoldReason.AcceptanceWords, Letters(Words) < 3),
        ];
        return [.. asked.Where(one => one.IsSo).Select(one => new HoldPoint(one.Reason) { Day = one.Reason == HoldReason.AcceptanceWhen ? On : null })];
    }

    /// <summary>All of it as one text: "Rhea Quill, 2026-03-02, in writing, kept in folder 7: “go ahead”".</summary>
    public string Text() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Who}, {On:yyyy-MM-dd}, {HowWords(How)}{(How == SaidHow.InWriting ? $", kept: {KeptAt}" : "")}: “{Words}”");

    private static string HowWords(SaidHow? how) => how switch
    {
        SaidHow.InPerson => "in person",
        SaidHow.ByTelephone => "by telephone",
        SaidHow.InWriting => "in writing",
        _ => "not said how",
    };

    private static int Letters(string text) => text.Count(char.IsLetterOrDigit);
}
