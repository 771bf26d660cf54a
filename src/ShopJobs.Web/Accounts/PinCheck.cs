using System.Globalization;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>
/// Looks at PINs. A try is counted before the PIN is compared, under the write lock, so that tries sent at the same
/// instant cannot slip past the delay; a right PIN takes the count back.
/// </summary>
public sealed class PinCheck(
    IDbContextFactory<ShopDbContext> database, IPasswordHasher<Person> hasher, TimeProvider time, SavingTrouble trouble)
{
    /// <summary>Somebody comes to a tablet, or to a browser that is no tablet yet.</summary>
    public Task<PinAnswer> AtTheDoorAsync(PersonId who, string? pin, DeviceId? at, CancellationToken cancellation = default) =>
        CountedAsync(() => LookAtTheDoorAsync(who, pin, at, cancellation));

    private async Task<PinAnswer> LookAtTheDoorAsync(PersonId who, string? pin, DeviceId? at, CancellationToken cancellation)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        var now = time.GetUtcNow().UtcDateTime;
        var person = await shop.People.SingleOrDefaultAsync(row => row.Id == who && row.Active, cancellation);
        var tablet = await shop.Tablets.SingleOrDefaultAsync(row => row.Id == at, cancellation);
        if (person is null)
        {
            return new PinAnswer.No("Nobody by that name works here now. Pick a name from the list.");
        }

        if (person.PinFailures >= PinDelay.Closed)
        {
            return new PinAnswer.No($"The PIN of {person.Name} is closed after {PinDelay.Closed} wrong tries. Ask the lead for a new one.");
        }

        if (Later(person.NextPinAt, tablet?.NextPinAt) is { } wait && wait > now)
        {
            return new PinAnswer.No($"Too many wrong PINs. Wait {Words(wait - now)}, then try again.");
        }

        var pinsWrongHere = tablet is null ? 0 : CountAt(tablet, now);
        person.PinFailures++;
        person.NextPinAt = now + PinDelay.OfPerson(person.PinFailures);
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);

        if (Matches(person, pin))
        {
            await ForgiveAsync(shop, person, tablet, pinsWrongHere, cancellation);
            return new PinAnswer.Right();
        }

        shop.Note(person.PinFailures >= PinDelay.Closed ? DoorEvent.PinBlocked : DoorEvent.WrongPin, now, who, at);
        await shop.SaveChangesAsync(cancellation);
        return new PinAnswer.No(WrongPin(person.Name, PinDelay.OfPerson(person.PinFailures)));
    }

    /// <summary>
    /// Somebody signs inside a session. The session's own person is counted in the session only: wrong PINs tried
    /// elsewhere never stop work already signed in. Anybody else, a witness, comes to the door of this tablet.
    /// </summary>
    public Task<PinAnswer> InSessionAsync(
        Present here, PersonId signer, string? pin, CancellationToken cancellation = default) =>
        signer != here.Person
            ? AtTheDoorAsync(signer, pin, here.Tablet, cancellation)
            : CountedAsync(() => LookInSessionAsync(here, signer, pin, cancellation));

    private async Task<PinAnswer> LookInSessionAsync(Present here, PersonId signer, string? pin, CancellationToken cancellation)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        var now = time.GetUtcNow().UtcDateTime;
        var session = await shop.Sessions.SingleAsync(row => row.Id == here.Session, cancellation);
        var person = await shop.People.SingleAsync(row => row.Id == signer, cancellation);
        if (session.EndedAt is not null || !person.Active)
        {
            return new PinAnswer.No("You are signed out. Sign in again, then sign.");
        }

        if (session.NextPinAt > now)
        {
            return new PinAnswer.No($"Too many wrong PINs. Wait {Words(session.NextPinAt.Value - now)}, then try again.");
        }

        session.PinFailures++;
        session.NextPinAt = now + PinDelay.OfPerson(session.PinFailures);
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);

        if (Matches(person, pin))
        {
            session.PinFailures = 0;
            session.NextPinAt = null;
            session.LastSeenAt = now;
            await shop.SaveChangesAsync(cancellation);
            return new PinAnswer.Right();
        }

        var ends = session.PinFailures >= PinDelay.EndsSession;
        session.EndedAt = ends ? now : null;
        shop.Note(DoorEvent.WrongPin, now, signer, here.Tablet);
        await shop.SaveChangesAsync(cancellation);
        return new PinAnswer.No(ends
            ? "Too many wrong PINs: you are signed out. Sign in again; what was typed is still here."
            : WrongPin(person.Name, PinDelay.OfPerson(session.PinFailures)));
    }

    /// <summary>A try that can't be counted is not looked at.</summary>
    private async Task<PinAnswer> CountedAsync(Func<Task<PinAnswer>> look)
    {
        try
        {
            return await look();
        }
        catch (Exception failure) when (trouble.Takes(failure))
        {
            return new PinAnswer.No($"No PIN can be taken. {trouble.Words}");
        }
    }

    private bool Matches(Person person, string? pin) =>
        Pin.LooksLikeOne(pin)
        && hasher.VerifyHashedPassword(person, person.PinHash, pin!) != PasswordVerificationResult.Failed;

    private static int CountAt(Tablet tablet, DateTime now)
    {
        var before = now - tablet.LastPinFailureAt > PinDelay.TabletForgets ? 0 : tablet.PinFailures;
        tablet.PinFailures = before + 1;
        tablet.LastPinFailureAt = now;
        tablet.NextPinAt = now + PinDelay.OfTablet(tablet.PinFailures);
        return before;
    }

    private static async Task ForgiveAsync(
        ShopDbContext shop, Person person, Tablet? tablet, int pinsWrongHere, CancellationToken cancellation)
    {
        person.PinFailures = 0;
        person.NextPinAt = null;
        if (tablet is not null)
        {
            tablet.PinFailures = pinsWrongHere;
            tablet.NextPinAt = null;
        }

        await shop.SaveChangesAsync(cancellation);
    }

    private static DateTime? Later(DateTime? one, DateTime? other) => one > other || other is null ? one : other;

    private static string WrongPin(string name, TimeSpan wait) => wait == TimeSpan.Zero
        ? $"That is not the PIN of {name}. Check the name, then type the PIN again."
        : $"That is not the PIN of {name}. Wait {Words(wait)}, then try again, or ask the lead for a new PIN.";

    private static string Words(TimeSpan wait) => wait.TotalSeconds < 100
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(wait.TotalSeconds):0} seconds")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(wait.TotalMinutes):0} minutes");
}
