using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>Between the domain's verdicts and the store's decisions and results.</summary>
internal static class Answers
{
    public static Decision NotActive() => new Decision.Refuse(
        DeskAnswer.Refused([new HoldPoint(HoldReason.NoPersonHere)], HoldNames.Plain));

    public static Decision ToDecision(
        LogbookReader reader,
        LogbookId logbook,
        Verdict verdict,
        HoldNames names,
        Kept kept,
        SeenClock seen,
        Action<SqliteTransaction>? rows)
    {
        if (verdict is Verdict.Refused refused)
        {
            return new Decision.Refuse(DeskAnswer.Refused(refused.Reasons, names));
        }

        var entries = ((Verdict.Accepted)verdict).Entries.Select(entry => entry with { SignedAs = kept.SignedAs, ShownAs = kept.ShownAs }).ToList();
        var encoded = entries.Select(entry => (Entry: entry, Written: EntryCodec.Encode(entry))).ToList();
        var unsaid = seen.Unsaid.Select(step => (Entry: step, Written: EntryCodec.Encode(step))).ToList();
        var number = reader.Head(logbook).Number + (logbook == LogbookId.Shop ? unsaid.Count : 0);
        var answer = new DeskAnswer(
            [.. encoded.Select(e => new EntryAnswer(++number, e.Written.Kind, e.Entry.Facets().Problems))], []);
        return new Decision.Accept(
            [
                .. unsaid.Select(e => new NewEntry(LogbookId.Shop, e.Written.Kind, e.Written.Version, e.Written.Payload, e.Entry.Facets().Keys)),
                .. encoded.Select(e => new NewEntry(logbook, e.Written.Kind, e.Written.Version, e.Written.Payload, e.Entry.Facets().Keys)),
            ],
            kept.Contents,
            answer)
        {
            Rows = rows,
        };
    }

    public static DeskAnswer Of(RunResult result) => result switch
    {
        RunResult.Saved { Answer: DeskAnswer answer } => answer,
        RunResult.Repeated repeated => DeskAnswer.Of(repeated.Answer) with { Repeated = true },
        RunResult.Refused { Answer: DeskAnswer answer } => answer,
        RunResult.NotSaved failed => DeskAnswer.Failed(failed.Why),
        RunResult.CommandIdTaken => DeskAnswer.Failed("This command id was used for something else. Reload the page and do it again."),
        _ => throw new InvalidOperationException($"Unknown result {result.GetType().Name}."),
    };
}
