using System.Globalization;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>Erases a customer's personal data on the lead's signature: rows and texts go in one transaction, the logbooks' chains stay.</summary>
public sealed class CustomerEraser(LogbookWriter writer, LogbookSnapshots snapshots, ShopClock clock, TimeProvider time)
{
    /// <summary>What would go and what stays; null when there is no such customer.</summary>
    public ErasurePlan? Plan(CustomerId customer) => snapshots.Read(reader => ErasurePlan.Of(reader, customer));

    /// <summary>The name that stands in place of the customer's.</summary>
    public static string PseudonymOf(CustomerId customer) => $"Erased customer {customer.Value.ToString("N", CultureInfo.InvariantCulture)[..8].ToUpperInvariant()}";

    /// <summary>Erases exactly what was shown.</summary>
    /// <param name="proof">Proof of the PIN for this command and this screen.</param>
    /// <param name="shown">What was shown to the signer, as <see cref="ErasurePlan.ToSign"/> has it.</param>
    public async Task<DeskAnswer> EraseAsync(
        CustomerId customer, SignatureProof proof, CommandId id, ShownLines shown, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(shown);
        if (!Signing.Covers(proof, id, shown, shown.Hex, time))
        {
            return Signing.NotForThis;
        }

        var result = await writer.RunAsync(
            id,
            RequestDigest.Of(customer.Value, new Asked(shown.Hex)),
            new Stamp(proof.Signer, proof.SessionPerson, proof.Tablet),
            reader => Decide(reader, customer, proof, shown),
            cancellation);
        return Answers.Of(result);
    }

    private Decision Decide(LogbookReader reader, CustomerId customer, SignatureProof proof, ShownLines shown)
    {
        var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
        var plan = ErasurePlan.Of(reader, customer);
        var why = !Surroundings.IsActive(reader, proof.Signer) || !reader.RightsOf(proof.Signer, today).Contains(Right.Lead)
            ? "Customers' data is the lead's to erase. The lead signs."
            : plan is null ? "This customer is not in the book any more."
            : plan.Refusals.Count > 0 ? string.Join(" ", plan.Refusals)
            : plan.ToSign(proof.Command).Shown.Hex != shown.Hex ? "What the shop holds is no longer what was shown. Load the page again, read it and sign once more."
            : null;
        return why is not null
            ? new Decision.Refuse(DeskAnswer.Failed(why))
            : new Decision.Accept([], [], new DeskAnswer([], []))
            {
                Erase = plan!.Contents,
                Rows = transaction => new ErasedRows(transaction, plan, reader.At).Write(proof.Signer, proof.Tablet),
            };
    }

    private sealed record Asked(string Shown);

    private sealed class ErasedRows(SqliteTransaction transaction, ErasurePlan plan, DateTime at)
    {
        public void Write(PersonId by, DeviceId tablet)
        {
            var customer = plan.Customer.Value;
            Run("UPDATE Customers SET Name = $2, Contact = '', ErasedAt = $3, ErasedBy = $4, ChangedAt = $3, ChangedBy = $4, Revision = $5 WHERE Id = $1",
                customer, PseudonymOf(plan.Customer), at, by.Value, Guid.NewGuid());
            Run("UPDATE Acknowledgements SET Words = '' WHERE CustomerId = $1", customer);
            foreach (var car in plan.Cars)
            {
                Run("UPDATE Jobs SET AskedFor = '' WHERE CarId = $1 AND StartedAt > $2 AND StartedAt <= $3", car.Car.Value, car.From ?? DateTime.MinValue, car.Until ?? DateTime.MaxValue);
                if (car.IsTheirs)
                {
                    Run("UPDATE Cars SET Mark = '', Note = '', ChangedAt = $2, ChangedBy = $3, Revision = $4 WHERE Id = $1", car.Car.Value, at, by.Value, Guid.NewGuid());
                    Run("UPDATE CustomerLinks SET RevokedAt = $2 WHERE CarId = $1 AND RevokedAt IS NULL", car.Car.Value, at);
                }
            }

            Run("INSERT INTO DoorNotes (At, Event, TabletId, ByPersonId) VALUES ($1, $2, $3, $4)", at, nameof(DoorEvent.CustomerErased), tablet.Value, by.Value);
        }

        private void Run(string sql, params object[] values)
        {
            using var command = transaction.Connection!.CreateCommand();
            command.Transaction = transaction;
#pragma warning disable CA2100 // Only this file's own texts reach it.
            command.CommandText = sql;
#pragma warning restore CA2100
            for (var at = 0; at < values.Length; at++)
            {
                command.Parameters.AddWithValue($"${at + 1}", values[at]);
            }

            command.ExecuteNonQuery();
        }
    }
}
