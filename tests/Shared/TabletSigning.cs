using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Tests.Shared;

/// <summary>Signs as people do: at a tablet, with a session there and a PIN, and with a line that is shown.</summary>
/// <param name="services">Any container with the shop's data and desks.</param>
/// <param name="tablet">An enrolled tablet.</param>
internal sealed class TabletSigning(IServiceProvider services, DeviceId tablet)
{
    private static readonly string[] Lines = ["Signed by a test"];

    /// <summary>Signs a command on a car. What it covers is what is there now.</summary>
    public async Task<DeskAnswer> SignAsync(
        CarId car, PersonId signer, string pin, SignedCommand command, IReadOnlyList<NewContent>? contents = null)
    {
        var (id, shown, desk) = (new CommandId(Guid.NewGuid()), Shown(command.GetType().Name), services.GetRequiredService<CarDesk>());
        var reading = desk.Read(car, signer);
        var asked = reading.State.AsShown(reading.Now, command) with { Shown = shown.Hex };
        return await desk.SignAsync(car, await ProveAsync(signer, pin, id, shown), id, shown, asked, contents);
    }

    /// <summary>Signs a command on a tool as it stands now.</summary>
    /// <param name="command">Made from the digest of what is shown and the tool's newest entry.</param>
    public async Task<DeskAnswer> SignAsync(
        ToolId tool, PersonId signer, string pin, Func<string, long, SignedToolCommand> command, IReadOnlyList<NewContent>? contents = null)
    {
        var (id, desk) = (new CommandId(Guid.NewGuid()), services.GetRequiredService<ToolDesk>());
        var number = desk.ReadAll().TryGetValue(tool, out var state) ? state.Number : 0;
        var shown = Shown("A tool");
        return await desk.SignAsync(tool, await ProveAsync(signer, pin, id, shown), id, shown, command(shown.Hex, number), contents);
    }

    /// <summary>The proof of a person's PIN.</summary>
    public async Task<SignatureProof> ProveAsync(PersonId signer, string pin, CommandId id, ShownLines shown)
    {
        var database = services.GetRequiredService<IDbContextFactory<ShopDbContext>>();
        var clock = services.GetRequiredService<ShopClock>();
        var trouble = services.GetRequiredService<SavingTrouble>();
        var sessions = new SessionDesk(database, clock, Options.Create(new DoorRules()), trouble);
        var here = new WhoIsHere(new Circuit(PersonClaims.Of(await sessions.OpenAsync(signer, tablet), "somebody")), sessions);
        var hasher = services.GetService<IPasswordHasher<Person>>() ?? new PasswordHasher<Person>();
        var pins = new PinCheck(database, hasher, services.GetRequiredService<TimeProvider>(), trouble);
        return await new SignatureProof.Desk(here, pins, database, clock).VerifyAsync(signer, pin, id, shown.Digest) switch
        {
            SignatureAnswer.Signed signed => signed.Proof,
            SignatureAnswer.Refused refused => throw new InvalidOperationException(refused.Words),
            var other => throw new InvalidOperationException($"Unknown answer {other.GetType().Name}."),
        };
    }

    private static ShownLines Shown(string title) => new("SIGN: in a test", title, Lines);

    private sealed class Circuit(ClaimsPrincipal user) : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(user));
    }
}
