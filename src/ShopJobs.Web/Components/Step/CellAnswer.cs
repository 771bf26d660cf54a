using System.Text.Json.Serialization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>What became of a report, for the tablet's script. An answer without <see cref="Saved"/> leaves the report on the tablet.</summary>
/// <param name="Saved">It stands in the logbook.</param>
/// <param name="Counts">Nothing is against it.</param>
/// <param name="Number">Newest entry it made; the page that shows this number or a later one shows the report.</param>
/// <param name="Words">What to tell the person: why it was refused, or recorded and does not count, and what to do next.</param>
public sealed record CellAnswer(bool Saved, bool Counts, long Number, IReadOnlyList<string> Words)
{
    /// <summary>The same command was answered before; nothing was recorded now.</summary>
    public bool Repeated { get; init; }

    /// <summary>Whoever did it has left, and who is signed in may save it as reported by him.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool MayReport { get; init; }

    /// <summary>A word to whoever reported it, and to nobody else.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Thought { get; init; }

    /// <summary>The tablet should try again by itself.</summary>
    [JsonIgnore]
    public bool TryAgain { get; init; }

    /// <summary>The desk's answer in words.</summary>
    public static CellAnswer Of(DeskAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.NotSaved is { } why)
        {
            return new CellAnswer(false, false, 0, [why]) { TryAgain = true };
        }

        return answer.Recorded
            ? new CellAnswer(
                true,
                answer.Counts,
                answer.Entries.Max(entry => entry.Number),
                [.. answer.Entries.SelectMany(entry => entry.Problems).Distinct().Select(problem => Sentence(Words_(problem), HoldWords.Next(problem)))])
            { Repeated = answer.Repeated }
            : new CellAnswer(false, false, 0, [.. answer.Reasons.Select(reason => Sentence(reason.Words, reason.Next))]);
    }

    /// <summary>Not taken, for one reason in words.</summary>
    public static CellAnswer No(string words) => new(false, false, 0, [words]);

    private static string Words_(HoldReason problem) => $"Recorded, does not count: {HoldWords.Of(problem)}";

    private static string Sentence(string words, string next) => $"{words}. Next: {next}.";
}
