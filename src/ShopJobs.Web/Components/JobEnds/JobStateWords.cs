using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.JobEnds;

/// <summary>How a job stands, as people say it: "on hold since 3 Mar 2026 14:02, by Edda, because “parts are late”".</summary>
/// <param name="texts">Why, by digest.</param>
public sealed class JobStateWords(
    ShopClock clock, IReadOnlyDictionary<PersonId, string> names, IReadOnlyDictionary<ContentDigest, string> texts)
{
    /// <summary>Words for cars on which no job was ever held, ended or given up by hand.</summary>
    public static JobStateWords None(ShopClock clock) =>
        new(clock, new Dictionary<PersonId, string>(), new Dictionary<ContentDigest, string>());

    /// <summary>A job that is on hold, has ended, was given up or taken back; null while it simply runs.</summary>
    public string? Of(JobBook job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return job switch
        {
            { OnHold: { } hold } => $"on hold since {By(hold)}",
            { End: JobEnd.ByRelease } => "ended with a release",
            { End: JobEnd.ByTheLead, Word: { } word } => $"ended {By(word)}: every step is signed",
            { End: JobEnd.Cancelled, Word: { } word } => $"cancelled {By(word)}",
            { End: JobEnd.TakenBack, Word: { } word } => $"started on the wrong car, taken back {By(word)}",
            _ => null,
        };
    }

    private string By(JobWord word) => $"{clock.Words(word.At)}, by {names.GetValueOrDefault(word.Person, "somebody")}"
        + (word.Reason is { } reason ? $", because “{texts.GetValueOrDefault(reason, "not read")}”" : "");
}
