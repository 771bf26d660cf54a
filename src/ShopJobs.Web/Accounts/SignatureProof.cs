using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Accounts;

/// <summary>
/// One person's PIN was right for one command and for one screen. Made by <see cref="Desk"/> and nowhere else; it is
/// worth nothing for another command or another screen.
/// </summary>
public sealed class SignatureProof
{
    /// <summary>A proof is for the operation it was asked in, not for later.</summary>
    private static readonly TimeSpan GoodFor = TimeSpan.FromMinutes(2);

    private readonly byte[] digest;

    private SignatureProof(Person signer, Present here, CommandId command, byte[] digest, DateTime at)
    {
        Signer = signer.Id;
        NameAtSigning = signer.Name;
        Command = command;
        Tablet = here.Tablet;
        Session = here.Session;
        SessionPerson = here.Person;
        SignedAt = at;
        this.digest = [.. digest];
    }

    /// <summary>The person of the entry.</summary>
    public PersonId Signer { get; }

    public string NameAtSigning { get; }

    public CommandId Command { get; }

    public DeviceId Tablet { get; }

    public SessionId Session { get; }

    /// <summary>Who was signed in at the tablet; differs from the signer when a witness signs there.</summary>
    public PersonId SessionPerson { get; }

    /// <summary>UTC.</summary>
    public DateTime SignedAt { get; }

    /// <summary>SHA-256 of what was shown; a copy.</summary>
    public byte[] Digest => [.. digest];

    /// <summary>True for this command, this screen, and shortly after the PIN was typed.</summary>
    public bool Covers(CommandId command, ReadOnlySpan<byte> shown, DateTime now) =>
        command == Command && shown.SequenceEqual(digest) && now - SignedAt <= GoodFor && now >= SignedAt;

    /// <summary>Takes a PIN and makes a proof of it.</summary>
    public sealed class Desk(
        WhoIsHere here, PinCheck pins, Microsoft.EntityFrameworkCore.IDbContextFactory<ShopDbContext> database, ShopClock clock)
    {
        /// <summary>
        /// Checks the signer's PIN at this tablet for this command and screen.
        /// </summary>
        /// <param name="signer">Who signs; need not be who is signed in.</param>
        /// <param name="pin">Six digits.</param>
        /// <param name="command">The command the signature is for.</param>
        /// <param name="shown">SHA-256 of what was shown, see <see cref="ShownDigest"/>.</param>
        /// <param name="cancellation">Stops the asking.</param>
        public async Task<SignatureAnswer> VerifyAsync(
            PersonId signer, string? pin, CommandId command, byte[] shown, CancellationToken cancellation = default)
        {
            if (shown is not { Length: 32 })
            {
                throw new ArgumentException("A signature covers a SHA-256 digest, 32 bytes.", nameof(shown));
            }

            if (await here.ActingAsync(cancellation) is not { } present)
            {
                return new SignatureAnswer.Refused("This tablet is locked. Sign in again, then sign.");
            }

            if (await pins.InSessionAsync(present, signer, pin, cancellation) is PinAnswer.No no)
            {
                return new SignatureAnswer.Refused(no.Words);
            }

            await using var shop = await database.CreateDbContextAsync(cancellation);
            var person = await shop.People.FindAsync([signer], cancellation)
                ?? throw new InvalidOperationException($"Person {signer.Value} passed the PIN check and is gone.");
            if (await shop.IsPinOfAnotherAsync(signer, cancellation))
            {
                return new SignatureAnswer.Refused(
                    $"Somebody else made the PIN of {person.Name} and may know it. {person.Name} signs in, presses the own name at the top, takes a PIN of their own, then signs.");
            }

            return new SignatureAnswer.Signed(new SignatureProof(person, present, command, shown, clock.Now));
        }
    }
}
