using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>What a card is entered against: the car, the job and the step, and what is known of the card's number.</summary>
/// <param name="PrintedAt">The print of the card whose number is typed, UTC; null where no such card is known.</param>
/// <param name="Moment">Date and time on the paper, UTC; null where they are missing or unreadable.</param>
/// <param name="Session">The session in which the person who enters was at that moment; null where in none.</param>
public sealed record CardFacts(
    CarReading Reading, JobBook Job, StepInstance Step, CardNumber? Number, DateTime? PrintedAt, DateTime? Moment, SessionId? Session,
    IReadOnlyDictionary<PersonId, string> Names)
{
    /// <summary>The number as it is written; null where none is known.</summary>
    public string? Card => Number?.On(Reading.Car, Job.Id);
}

/// <summary>One report of a card, made when its turn comes: the cycle is that of the card, after the reports before it.</summary>
/// <param name="Key">Its name in the form: a report that was recorded is not sent again.</param>
/// <param name="Words">What it reports.</param>
public sealed record CardLine(string Key, string Words, Func<CarReading, Report> Make)
{
    /// <summary>The text that the report names; null where it names none.</summary>
    public NewContent? Text { get; init; }
}

/// <summary>What becomes of one step of a card: late reports of its doer, or what is declared and does not count.</summary>
/// <param name="Wrong">What is wrong, by the id of its field: nothing is entered before it is put right.</param>
/// <param name="Lacks">Why it is declared; empty where it goes as late reports.</param>
/// <param name="Lines">The reports in order.</param>
public sealed record CardPlan(IReadOnlyDictionary<string, string> Wrong, IReadOnlyList<string> Lacks, IReadOnlyList<CardLine> Lines)
{
    /// <summary>True where it counts for nothing.</summary>
    public bool IsDeclared => Lacks.Count > 0;

    /// <summary>The plan for what is typed.</summary>
    public static CardPlan Of(CardFacts facts, TypedCard typed)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(typed);
        var wrong = CardCheck.Wrong(facts, typed);
        IReadOnlyList<string> lacks = [.. CardCheck.Lacks(facts, typed)];
        return new CardPlan(wrong, lacks, wrong.Count > 0 ? []
            : lacks.Count == 0 ? [.. LateReports.Of(facts, typed)]
            : [.. Declarations.Of(facts, typed)]);
    }
}
