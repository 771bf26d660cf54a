using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Drafts and issues work summaries.</summary>
public sealed class SummaryDesk(
    CarDesk cars, LogbookSnapshots snapshots, IDbContextFactory<ShopDbContext> database, ShopSettings settings, ShopClock clock, ThirdPerson third)
{
    /// <summary>What a fresh form starts with: the contact given last, the odometer as last recorded, the advice of the version before.</summary>
    public SummaryForm NewForm(CarId car)
    {
        var reading = cars.Read(car, person: null);
        var state = reading.State;
        var last = LastOf(state);
        return new SummaryForm
        {
            Contact = settings.Current.Contact,
            Distance = reading.Now.Distance,
            Odometer = (state.Odometer / reading.Now.Distance.Kilometres())?.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) ?? "",
            Advice = string.Join('\n', last?.Advice ?? []),
            Declined = string.Join('\n', last?.Declined ?? []),
        };
    }

    /// <summary>The next version as it would be issued now; null when there is no such car.</summary>
    public async Task<SummaryDraft?> DraftAsync(CarId id, SummaryForm form, Present by, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(by);
        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (await shop.Cars.AsNoTracking().FirstOrDefaultAsync(row => row.Id == id, cancellation) is not { } car)
        {
            return null;
        }

        var asked = await shop.Jobs.AsNoTracking().Where(job => job.CarId == id).ToDictionaryAsync(job => job.Id, job => job.AskedFor, cancellation);
        var initials = await shop.People.AsNoTracking().ToDictionaryAsync(person => person.Id, person => person.Initials, cancellation);
        var reading = cars.Read(id, by.Person);
        var entries = EntriesOf(id, reading.State.Number);
        var facts = new SummaryFacts(
            new SummaryCar(car.Name, car.Model, car.Mark),
            new SummaryShop(settings.Current.Name, form.Contact.Trim(), settings.Current.Demo),
            by.May(Right.Lead) ? $"{by.Initials}, lead" : by.Initials,
            asked,
            form.OdometerKm,
            form.AdviceLines,
            form.LeaveOut,
            reading.HeadHash,
            person => initials.GetValueOrDefault(person, "the shop"),
            instant => DateOnly.FromDateTime(clock.OnTheWall(instant)))
        { Odometer = Said(form.Read), Declined = form.DeclinedLines, NoThird = await third.MissingAsync(cancellation) is not null };
        return new SummaryDraft(
            id, SummaryMaker.Make(reading.State, entries, reading.Now, facts), reading.State.Number, Ended(reading), reading.Unreadable)
        {
            Suspended =
            [
                .. from kind in ReleaseKinds.All
                   let standing = reading.StandingOf(kind)
                   where standing.Kind == ReleaseStandingKind.Suspended
                   select (kind, reading.Now.Gather(standing.Why)),
            ],
        };
    }

    /// <summary>Issues a draft as it was shown. The contact is remembered for the next page.</summary>
    /// <param name="shown">What was shown to the signer, as <see cref="SummaryDraft.ToSign"/> has it.</param>
    public async Task<DeskAnswer> IssueAsync(
        SummaryDraft draft, SignatureProof proof, CommandId id, ShownLines shown, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(shown);
        if (draft.Unreadable is { } why)
        {
            return DeskAnswer.Failed($"The logbook can't be read to its end. {why}");
        }

        var snapshot = NewContent.Of(draft.Bytes);
        var answer = await cars.SignAsync(
            draft.Car, proof, id, shown, new IssueSummary(snapshot.Digest, draft.AsOf, shown.Hex), [snapshot], cancellation);
        if (answer.Recorded)
        {
            await settings.RememberContactAsync(draft.Page.Shop.Contact, cancellation);
        }

        return answer;
    }

    // Advice, and what was declined, holds until somebody changes it; an erased version has none to carry on.
    private WorkSummary? LastOf(CarState state) =>
        state.Summaries is [.., var last] && snapshots.Read(reader => reader.Content(last.Fact.Snapshot)) is StoredContent.Present before
            ? SummaryText.Read(before.Bytes.Span)
            : null;

    private List<Recorded> EntriesOf(CarId car, long upTo) => snapshots.Read(reader =>
        reader.Entries(Folders.LogbookOf(car), 0, (int)upTo).Select(Folders.Read).ToList());

    private static string? Said(OdometerReading? read) => read?.Words;

    private static List<EndedJob> Ended(CarReading reading) =>
    [
        .. from job in reading.State.Jobs.Values
           where !job.IsRunning
           orderby job.Number
           select new EndedJob(job.Id, TitleOf(reading.Placed(job), job)),
    ];

    private static string TitleOf(PlacedProcedure placed, JobBook job) => $"{placed.Procedure.Title}: {string.Join(", ", job.Fact.Places)}";
}
