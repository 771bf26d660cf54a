namespace ShopJobs.Domain.Logbook;

// The words of what is entered from paper.
internal static class PaperSentences
{
    public const string Again = "back it off and pull it again, or press HOLD and have it decided";

    public static (string Words, string Next)? Of(HoldPoint point, HoldSubject on) => point.Reason switch
    {
        HoldReason.DeclaredFromPaper => (on.With("declared from paper, does not count"), Again),
        HoldReason.RecordedAlready => (on.With("recorded already"), "look at that record; where it was pulled a second time press HOLD on it"),
        HoldReason.PaperTimeAhead => ("The time on the paper is still to come", "read date and time again"),
        HoldReason.PaperTimeBefore when point.At is { } last => (
            on.With(FormattableString.Invariant($"recorded at {WallTime.Minute(on.Names.OnTheWall(last))}, after the time on the paper")),
            "read date and time again; where they are right, declare it"),
        HoldReason.PaperTimeBefore => (on.With("recorded after the time on the paper"), "read date and time again; where they are right, declare it"),
        _ => null,
    };
}
