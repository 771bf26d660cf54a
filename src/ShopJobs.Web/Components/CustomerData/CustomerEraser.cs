using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>Erases a customer's personal data on the lead's signature: rows and texts go in one transaction, the logbooks' chains stay.</summary>
public sealed class CustomerEraser(ErasureDesk desk, LogbookSnapshots snapshots)
{
    /// <summary>What would go and what stays; null when there is no such customer.</summary>
    public ErasurePlan? Plan(CustomerId customer) => snapshots.Read(reader => ErasurePlan.Of(reader, customer));

    /// <summary>The name that stands in place of the customer's.</summary>
    public static string PseudonymOf(CustomerId customer) => $"Erased customer {customer.Value.ToString("N", CultureInfo.InvariantCulture)[..8].ToUpperInvariant()}";

    /// <summary>Erases exactly what was shown.</summary>
    /// <param name="proof">Proof of the PIN for this command and this screen.</param>
    /// <param name="id">The command that was asked to be signed.</param>
    /// <param name="shown">What was shown to the signer, as <see cref="ErasurePlan.ToSign"/> has it.</param>
    public Task<DeskAnswer> EraseAsync(
        CustomerId customer, SignatureProof proof, CommandId id, ShownLines shown, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(shown);
        return desk.SignAsync(
            customer.Value, proof, id, shown, new EraseContents(shown.Hex), reader => Decide(reader, customer, proof, id, shown), cancellation);
    }

    private static Erasure Decide(LogbookReader reader, CustomerId customer, SignatureProof proof, CommandId id, ShownLines shown)
    {
        if (ErasurePlan.Of(reader, customer) is not { } plan)
        {
            return Erasure.No("This customer is not in the book any more.");
        }

        return plan.Refusals.Count > 0 ? Erasure.No(string.Join(" ", plan.Refusals))
            : plan.ToSign(id).Shown.Hex != shown.Hex ? Erasure.No("What the shop holds is no longer what was shown. Load the page again, read it and sign once more.")
            : new Erasure(plan.Contents, transaction => new ErasedRows(transaction, plan, reader.At).Write(proof.Signer, proof.Tablet));
    }
}
