using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Names;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>The lead looks after people and their rights. Commands return null, or why not and what to do.</summary>
public sealed class PeopleDesk(
    IDbContextFactory<ShopDbContext> database, LeadChange door, ShopClock clock, IPasswordHasher<Person> hasher)
{
    /// <summary>A right begins at most so many days before it is given (common practice, no source).</summary>
    public const int MostDaysBack = 31;

    public async Task<IReadOnlyList<Person>> AllAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.People.AsNoTracking().Include(person => person.Rights)
            .OrderByDescending(person => person.Active).ThenBy(person => person.Name).ToListAsync(cancellation);
    }

    public async Task<PinGiven> AddAsync(PersonForm form, CancellationToken cancellation = default)
    {
        var check = new PersonFormValidator().Validate(form);
        if (!check.IsValid)
        {
            return new PinGiven.Refused(string.Join(" ", check.Errors.Select(error => error.ErrorMessage)));
        }

        var pin = Pin.Random();
        var name = Typed.Clean(form.Name);
        var refusal = await door.ChangeAsync(async (shop, by) =>
        {
            if (await shop.PersonLikeAsync(name, except: default, cancellation) is { } other)
            {
                return PersonTaken(name, other);
            }

            var person = new Person { Id = form.Id, Name = name, Initials = Initials.Of(name), PinHash = "" };
            person.PinHash = hasher.HashPassword(person, pin);
            person.Touch(by, clock.Now);
            person.Rights.AddRange(form.Rights.Select(right =>
                new PersonRight { Id = Guid.NewGuid(), PersonId = person.Id, Right = right, From = clock.Today }));
            shop.People.Add(person);
            shop.Note(DoorEvent.PersonAdded, clock.Now, person.Id, tablet: null, by);
            return null;
        }, cancellation);
        return refusal is null ? new PinGiven.Given(name, pin) : new PinGiven.Refused(refusal);
    }

    /// <summary>Gives somebody another name. Records made until now keep the one they were made under; nobody else ever gets it.</summary>
    /// <param name="form">The person's id and the new name.</param>
    public async Task<string?> RenameAsync(PersonForm form, CancellationToken cancellation = default)
    {
        var check = new PersonFormValidator().Validate(form);
        return check.IsValid
            ? await door.ChangeAsync((shop, by) => RenameAsync(shop, form.Id, Typed.Clean(form.Name), by, cancellation), cancellation)
            : string.Join(" ", check.Errors.Select(error => error.ErrorMessage));
    }

    /// <summary>What a person was called before, newest first.</summary>
    public async Task<IReadOnlyList<NameBefore>> NamesBeforeAsync(PersonId id, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.NamesBefore.AsNoTracking().Where(row => row.PersonId == id).OrderByDescending(row => row.Until).ToListAsync(cancellation);
    }

    private async Task<string?> RenameAsync(ShopDbContext shop, PersonId id, string name, PersonId by, CancellationToken cancellation)
    {
        if (await shop.People.FindAsync([id], cancellation) is not { } person)
        {
            return LeadChange.NobodyLikeThat;
        }

        if (person.Name == name)
        {
            return null;
        }

        if (await shop.PersonLikeAsync(name, id, cancellation) is { } other)
        {
            return PersonTaken(name, other);
        }

        shop.NamesBefore.Add(new NameBefore { Id = Guid.NewGuid(), PersonId = id, Name = person.Name, Until = clock.Now, ChangedBy = by });
        (person.Name, person.Initials) = (name, Initials.Of(name));
        person.Touch(by, clock.Now);
        shop.Note(DoorEvent.PersonRenamed, clock.Now, id, tablet: null, by);
        return null;
    }

    /// <summary>Gives a new PIN and signs the person out everywhere.</summary>
    public async Task<PinGiven> ResetPinAsync(PersonId id, CancellationToken cancellation = default)
    {
        var given = "";
        var name = "";
        var refusal = await door.ChangeAsync(async (shop, by) =>
        {
            if (await shop.People.FindAsync([id], cancellation) is not { Active: true } person)
            {
                return LeadChange.NobodyLikeThat;
            }

            given = NewPin.Give(shop, hasher, person, by, clock.Now);
            name = person.Name;
            await EndSessionsAsync(shop, id, cancellation);
            return null;
        }, cancellation);
        return refusal is null ? new PinGiven.Given(name, given) : new PinGiven.Refused(refusal);
    }

    /// <summary>What ties a person to others, and whether somebody else knows the PIN.</summary>
    public async Task<(IReadOnlyList<Tie> Ties, bool PinOfAnother)> TiesOfAsync(PersonId id, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return (await shop.TiesOfAsync(id, cancellation), await shop.IsPinOfAnotherAsync(id, cancellation));
    }

    /// <summary>A third person signed that they know somebody. The proof must be for what was shown.</summary>
    public async Task<string?> ConfirmAsync(PersonId id, SignatureProof proof, byte[] shown, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(proof);
        if (!proof.Covers(proof.Command, shown, clock.Now))
        {
            return "The signature was for another screen or is too old. Sign again.";
        }

        return await door.ChangeAsync(async (shop, _) =>
        {
            var ties = await shop.TiesOfAsync(id, cancellation);
            if (await shop.IsPinOfAnotherAsync(id, cancellation) || proof.Signer == id || ties.All(tie => tie.By == proof.Signer))
            {
                return "Nothing here waits for that person's word. Load the page again.";
            }

            shop.Note(DoorEvent.PersonConfirmed, clock.Now, id, proof.Tablet, proof.Signer);
            return null;
        }, cancellation);
    }

    /// <summary>Closes the account of somebody who leaves, or opens it again. Old records keep the name.</summary>
    public Task<string?> SetActiveAsync(PersonId id, bool active, CancellationToken cancellation = default) =>
        door.ChangeAsync(async (shop, by) =>
        {
            if (await shop.People.FindAsync([id], cancellation) is not { } person)
            {
                return LeadChange.NobodyLikeThat;
            }

            person.Active = active;
            person.Touch(by, clock.Now);
            shop.Note(active ? DoorEvent.PersonReopened : DoorEvent.PersonClosed, clock.Now, id, tablet: null, by);
            await EndSessionsAsync(shop, id, cancellation);
            return null;
        }, cancellation);

    /// <summary>Gives a right from a day to a day. What was done before it was entered is not made good far back.</summary>
    public Task<string?> GiveAsync(PersonId id, Right right, DateOnly from, DateOnly? to, CancellationToken cancellation = default) =>
        door.ChangeAsync(async (shop, by) =>
        {
            if (from < clock.Today.AddDays(-MostDaysBack))
            {
                return $"The first day lies more than {MostDaysBack} days back. A right begins today, later, or at most {MostDaysBack} days ago.";
            }

            if (to < from)
            {
                return "The last day lies before the first. Change one of them.";
            }

            if (await shop.People.Include(row => row.Rights).SingleOrDefaultAsync(row => row.Id == id, cancellation) is not { } person)
            {
                return LeadChange.NobodyLikeThat;
            }

            if (person.Rights.Exists(held => held.Right == right && (to is null || held.From <= to) && (held.To is null || held.To >= from)))
            {
                return $"{person.Name} holds the right to {right.Words()} in those days already. End that one first.";
            }

            if (person.Rights.Find(held => RightSets.Exclude(held.Right, right) && (to is null || held.From <= to) && (held.To is null || held.To >= from)) is { } against)
            {
                return $"{person.Name} holds the right to {against.Right.Words()} in those days. A trainee holds no other right: end that one first.";
            }

            shop.Rights.Add(new PersonRight { Id = Guid.NewGuid(), PersonId = id, Right = right, From = from, To = to });
            shop.Note(DoorEvent.RightGiven, clock.Now, id, tablet: null, by);
            return null;
        }, cancellation);

    /// <summary>Takes a right away at once: yesterday was its last day, and one not begun before today never was. The door book keeps the instant.</summary>
    public Task<string?> EndAsync(Guid rightId, CancellationToken cancellation = default) =>
        door.ChangeAsync(async (shop, by) =>
        {
            if (await shop.Rights.FindAsync([rightId], cancellation) is not { } held)
            {
                return "That right is gone already.";
            }

            held.To = held.From >= clock.Today ? held.From.AddDays(-1) : clock.Today.AddDays(-1);
            shop.Note(DoorEvent.RightEnded, clock.Now, held.PersonId, tablet: null, by);
            return null;
        }, cancellation);

    private static string PersonTaken(string name, string other) =>
        $"{NameRules.Taken(name, other, "a person")} Names of people here now or earlier are never used twice; add a letter.";

    private Task EndSessionsAsync(ShopDbContext shop, PersonId id, CancellationToken cancellation)
    {
        var now = clock.Now;
        return shop.Sessions.Where(session => session.PersonId == id && session.EndedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(session => session.EndedAt, now), cancellation);
    }
}
