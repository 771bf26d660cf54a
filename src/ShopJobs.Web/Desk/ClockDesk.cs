using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Desk;

/// <summary>Where the lead sets the time again, and the shop's clock is read.</summary>
public sealed class ClockDesk(LogbookWriter writer, LogbookSnapshots snapshots, ClockWatch watch, ShopClock clock, TimeProvider time)
{
    /// <summary>The shop as it is now.</summary>
    public ShopState Read() => snapshots.Read(reader => watch.Look(reader).Shop);

    /// <summary>Signs that the clock is right. The entry takes the clock's instant, also where that is before the newest entry.</summary>
    /// <param name="proof">Proof of the PIN for this command and this screen.</param>
    /// <param name="id">The command that was asked to be signed.</param>
    /// <param name="shown">What was shown to the signer.</param>
    /// <param name="command">Made from what was shown, before it was signed.</param>
    public async Task<DeskAnswer> SignAsync(
        SignatureProof proof, CommandId id, ShownLines shown, SetClock command, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(command);
        if (!Signing.Covers(proof, id, shown, command.Shown, time))
        {
            return Signing.NotForThis;
        }

        var kept = Kept.Signed(proof, shown, []);
        var result = await writer.RunAsync(
            id,
            RequestDigest.Of(LogbookId.Shop, command),
            new Stamp(proof.Signer, proof.SessionPerson, proof.Tablet) { SetsClock = true },
            reader =>
            {
                if (!Surroundings.IsActive(reader, proof.Signer))
                {
                    return Answers.NotActive();
                }

                var seen = watch.Look(reader);
                var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
                return Answers.ToDecision(
                    reader, LogbookId.Shop, seen.Shop.Decide(command, reader.RightsOf(proof.Signer, today)), HoldNames.Plain, kept, seen, null);
            },
            cancellation);
        return Answers.Of(result);
    }
}
