using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>What became of one report of a card.</summary>
public sealed record CardAnswer(string Words, DeskAnswer Answer);

/// <summary>Finds what a card is entered against, and enters it report by report.</summary>
public sealed class JobCardDesk(CarDesk desk, CarEntries entries, SessionDesk sessions, PeopleShelf people, WhoIsHere who, ShopClock clock)
{
    /// <summary>What is known of the card that is typed.</summary>
    /// <param name="here">Who enters it.</param>
    public async Task<CardFacts> FactsAsync(CarReading reading, JobBook job, StepInstance step, TypedCard typed, Present here, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(here);
        var number = CardNumber.Read(typed.Number, reading.Car, job.Id);
        var printed = number is { } card && card.Entry <= reading.State.Number ? entries.Find(reading.Car, card.Entry)?.At.AddMinutes(card.Minutes) : null;
        var moment = typed.Day is { } day && CardTime.Read(typed.Time) is { } time ? clock.Instant(day.ToDateTime(time)) : null;
        var session = moment is { } at ? await sessions.OfAsync(here.Person, at, cancellation) : null;
        return new CardFacts(reading, job, step, printed is null ? null : number, printed, moment, session, await people.NamesAsync(cancellation));
    }

    /// <summary>Enters the reports in order, each judged on the car as it is then; stops where one could not be saved.</summary>
    /// <param name="recorded">Keys of reports that were recorded before; those recorded now are added.</param>
    public async Task<IReadOnlyList<CardAnswer>> EnterAsync(CarId car, CardPlan plan, ISet<string> recorded, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(recorded);
        var answers = new List<CardAnswer>();
        foreach (var line in plan.Lines.Where(line => !recorded.Contains(line.Key)))
        {
            var answer = await who.ActingAsync(cancellation) is { } here
                ? await desk.RunAsync(car, new CommandId(Guid.NewGuid()), here, line.Make(desk.Read(car, here.Person, here.Session)), line.Text is { } text ? [text] : null, cancellation: cancellation)
                : DeskAnswer.Failed("This tablet is locked. Sign in again, then do it again.");
            answers.Add(new CardAnswer(line.Words, answer));
            if (answer.NotSaved is not null)
            {
                break;
            }

            if (answer.Recorded)
            {
                recorded.Add(line.Key);
            }
        }

        return answers;
    }
}
