using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>A customer's ordinary rows after the erasure: what is personal is empty, links are ended, and the door book says who signed.</summary>
internal sealed class ErasedRows(SqliteTransaction transaction, ErasurePlan plan, DateTime at)
{
    public void Write(PersonId by, DeviceId tablet)
    {
        var customer = plan.Customer.Value;
        Run("UPDATE Customers SET Name = $2, Contact = '', ErasedAt = $3, ErasedBy = $4, ChangedAt = $3, ChangedBy = $4, Revision = $5 WHERE Id = $1",
            customer, CustomerEraser.PseudonymOf(plan.Customer), at, by.Value, Guid.NewGuid());
        Run("UPDATE Acknowledgements SET Words = '' WHERE CustomerId = $1", customer);
        foreach (var car in plan.Cars)
        {
            Run("UPDATE Jobs SET AskedFor = '' WHERE CarId = $1 AND StartedAt > $2 AND StartedAt <= $3", car.Car.Value, car.From ?? DateTime.MinValue, car.Until ?? DateTime.MaxValue);
            if (car.IsTheirs)
            {
                Run("UPDATE Cars SET Mark = '', Chassis = '', Note = '', ChangedAt = $2, ChangedBy = $3, Revision = $4 WHERE Id = $1", car.Car.Value, at, by.Value, Guid.NewGuid());
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
        for (var place = 0; place < values.Length; place++)
        {
            command.Parameters.AddWithValue($"${place + 1}", values[place]);
        }

        command.ExecuteNonQuery();
    }
}
