using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Desk;

/// <summary>Whether a signature is for what is asked to be recorded.</summary>
internal static class Signing
{
    public static readonly DeskAnswer NotForThis =
        DeskAnswer.Failed("The signature was for another screen or is too old. Sign again.");

    /// <summary>
    /// True when the proof is for this command and for these lines, and the command was made from them. The digest is computed from the
    /// lines here, whatever the command says of itself.
    /// </summary>
    public static bool Covers(SignatureProof proof, CommandId id, ShownLines shown, string named, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(shown);
        return named == shown.Hex && proof.Covers(id, shown.Digest, time.GetUtcNow().UtcDateTime);
    }
}
