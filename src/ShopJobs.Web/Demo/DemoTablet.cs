using System.Globalization;
using System.Security.Claims;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Demo;

/// <summary>
/// The tablet at which the demo shop's invented people do what is in its book. They sign in, sign with their PINs and are
/// judged by the same desks as everybody; no browser ever holds this tablet's token, and it is revoked at the end.
/// </summary>
internal sealed class DemoTablet(
    IDbContextFactory<ShopDbContext> database,
    SessionDesk sessions,
    PinCheck pins,
    CarDesk cars,
    ShopClock clock,
    IReadOnlyDictionary<string, PersonId> people,
    string script)
{
    private readonly Circuit circuit = new();
    private readonly Dictionary<CarId, int> given = [];
    private Tablet? tablet;

    /// <summary>Who sits at it.</summary>
    public WhoIsHere Here { get; private set; } = default!;

    /// <summary>A person sits down; enrols the tablet the first time.</summary>
    public async Task SitDownAsync(DemoPeople.DemoPerson person)
    {
        tablet ??= await EnrolAsync();
        circuit.User = PersonClaims.Of(await sessions.OpenAsync(people[person.Name], tablet.Id), person.Name);
        Here = new WhoIsHere(circuit, sessions);
    }

    /// <summary>A command nobody signs. Throws when it is not recorded.</summary>
    public async Task<DeskAnswer> DoAsync(
        CarId car, Report command, IReadOnlyList<NewContent>? contents = null, Action<SqliteTransaction>? rows = null) => Expect(
            await cars.RunAsync(car, NextOn(car), await PresentAsync(), command, contents, rows), command.GetType().Name);

    /// <summary>The next command on this car stands in its book already.</summary>
    public void Passed(CarId car) => NextOn(car);

    /// <summary>A signed command. Its lines say that nothing but the demo's script was shown.</summary>
    public async Task SignAsync(CarId car, DemoPeople.DemoPerson signer, Func<string, SignedCommand> of)
    {
        var id = NextOn(car);
        var shown = new ShownLines("Demo shop", "Invented work", ["Signed by the script that furnishes the demo shop."]);
        var reading = cars.Read(car, people[signer.Name]);
        var command = reading.State.AsShown(reading.Now, of(shown.Hex));
        Expect(await cars.SignAsync(car, await ProveAsync(signer, id, shown), id, shown, command), command.GetType().Name);
    }

    /// <summary>The proof of a person's PIN for a command and what was shown.</summary>
    public async Task<SignatureProof> ProveAsync(DemoPeople.DemoPerson signer, CommandId command, ShownLines shown) =>
        await new SignatureDesk(Here, pins, database, clock).VerifyAsync(people[signer.Name], signer.Pin, command, shown.Digest) switch
        {
            SignatureAnswer.Signed signed => signed.Proof,
            SignatureAnswer.Refused refused => throw new InvalidOperationException($"The demo shop's {signer.Name} could not sign: {refused.Words}"),
            var other => throw new InvalidOperationException($"Unknown answer {other.GetType().Name}."),
        };

    // The script gives the same commands in the same order, so each gets the id it would get again: run once more, it gets the
    // first answers and records nothing twice.
    private CommandId NextOn(CarId car)
    {
        given[car] = given.GetValueOrDefault(car) + 1;
        return new CommandId(Numbered(car, string.Create(CultureInfo.InvariantCulture, $"{script} {given[car]}")));
    }

    /// <summary>An id that is always the same for a car and a purpose.</summary>
    public static Guid Numbered(CarId car, string purpose) =>
        new(SHA256.HashData(Encoding.UTF8.GetBytes($"{car.Value} {purpose}")).AsSpan(0, 16));

    /// <summary>Everybody leaves and the tablet is revoked.</summary>
    public async Task PutAwayAsync()
    {
        await sessions.EndAsync(circuit.User);
        await using var shop = await database.CreateDbContextAsync();
        var row = await shop.Tablets.SingleAsync(row => row.Id == tablet!.Id);
        (row.RevokedAt, row.RevokedBy) = (clock.Now, row.EnrolledBy);
        await shop.SaveChangesAsync();
    }

    public static DeskAnswer Expect(DeskAnswer answer, string what) => answer.Recorded
        ? answer
        : throw new InvalidOperationException(
            $"The demo shop could not {what}: {answer.NotSaved}{string.Join("; ", answer.Reasons.Select(reason => $"{reason.Words}, {reason.Next}"))}");

    public async Task<Present> PresentAsync() =>
        await Here.ActingAsync() ?? throw new InvalidOperationException("Nobody sits at the demo shop's tablet.");

    private async Task<Tablet> EnrolAsync()
    {
        var lead = people[DemoPeople.Lead.Name];
        var made = new Tablet
        {
            Id = new DeviceId(Guid.NewGuid()),
            Name = "Demo script, invented work",
            TokenHash = SHA256.HashData(RandomNumberGenerator.GetBytes(32)),
            EnrolledBy = lead,
            EnrolledAt = clock.Now,
        };
        await using var shop = await database.CreateDbContextAsync();
        shop.Tablets.Add(made);
        await shop.SaveChangesAsync();
        return made;
    }

    private sealed class Circuit : AuthenticationStateProvider
    {
        public ClaimsPrincipal User { get; set; } = new(new ClaimsIdentity());

        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(User));
    }
}
