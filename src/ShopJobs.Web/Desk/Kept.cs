using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>Texts that are kept outside the entries of a command.</summary>
/// <param name="Contents">All of them.</param>
internal sealed record Kept(IReadOnlyList<NewContent> Contents)
{
    /// <summary>The signer's name; null where nobody signed.</summary>
    public ContentDigest? SignedAs { get; private init; }

    /// <summary>What was shown to the signer; null where nobody signed.</summary>
    public ContentDigest? ShownAs { get; private init; }

    /// <summary>The command's texts, the signer's name as it is now and what was shown.</summary>
    public static Kept Signed(SignatureProof proof, ShownLines shown, IReadOnlyList<NewContent> contents)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(shown);
        var name = NewContent.Of(Encoding.UTF8.GetBytes(proof.NameAtSigning));
        var lines = NewContent.Of(shown.ToBytes());
        return new Kept([.. contents, name, lines]) { SignedAs = name.Digest, ShownAs = lines.Digest };
    }
}
