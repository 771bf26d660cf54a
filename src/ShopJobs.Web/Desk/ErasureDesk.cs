using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Desk;

/// <summary>Where contents beside the logbooks are erased on the lead's signature. No entry is written and none is touched.</summary>
public sealed class ErasureDesk(LogbookWriter writer, ShopClock clock, TimeProvider time)
{
    /// <summary>Erases what the decision names, in one transaction with its rows.</summary>
    /// <param name="about">Whom it is about.</param>
    /// <param name="proof">Proof of the PIN for this command and this screen.</param>
    /// <param name="id">The command that was asked to be signed.</param>
    /// <param name="shown">What was shown to the signer.</param>
    /// <param name="command">Made from what was shown, before it was signed.</param>
    /// <param name="decide">Pure but for what it reads from the reader; may be called twice.</param>
    internal async Task<DeskAnswer> SignAsync(
        Guid about,
        SignatureProof proof,
        CommandId id,
        ShownLines shown,
        EraseContents command,
        Func<LogbookReader, Erasure> decide,
        CancellationToken cancellation)
    {
        if (!Signing.Covers(proof, id, shown, command.Shown, time))
        {
            return Signing.NotForThis;
        }

        var result = await writer.RunAsync(
            id,
            RequestDigest.Of(about, command),
            new Stamp(proof.Signer, proof.SessionPerson, proof.Tablet),
            reader =>
            {
                var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
                if (!Surroundings.IsActive(reader, proof.Signer) || !reader.RightsOf(proof.Signer, today).Contains(Right.Lead))
                {
                    return new Decision.Refuse(DeskAnswer.Failed("Only the lead erases data. The lead signs."));
                }

                return decide(reader) switch
                {
                    { Refused: { } why } => new Decision.Refuse(DeskAnswer.Failed(why)),
                    var erasure => new Decision.Accept([], [], new DeskAnswer([], [])) { Erase = erasure.Contents, Rows = erasure.Rows },
                };
            },
            cancellation);
        return Answers.Of(result);
    }
}
