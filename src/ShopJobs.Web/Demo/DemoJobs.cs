using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Demo;

/// <summary>Puts a procedure on a demo car: the entry, the job's row and who is on it stand or fall together.</summary>
internal sealed class DemoJobs(DemoTablet tablet, Func<string, (Procedure Procedure, string Digest)> procedures, string registerDigest, DateTime at)
{
    public async Task<JobId> StartAsync(CarId car, string code, string askedFor, PersonId assigned)
    {
        var (procedure, digest) = procedures(code);
        var job = new JobId(DemoTablet.Numbered(car, $"job {code}"));
        var by = (await tablet.PresentAsync()).Person;
        await tablet.DoAsync(
            car,
            new StartJob(job, procedure, digest, registerDigest, DemoWheels.Places),
            rows: transaction =>
            {
                Insert(
                    transaction,
                    """
                    INSERT INTO Jobs (Id, CarId, ProcedureDigest, RegisterDigest, Places, Title, AskedFor, StartedAt, StartedBy)
                    VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)
                    """,
                    job.Value, car.Value, digest, registerDigest, string.Join(',', DemoWheels.Places), procedure.Title, askedFor, at, by.Value);
                Insert(
                    transaction,
                    """INSERT INTO Assignments (Id, JobId, StepInstanceId, PersonId, "From", "To") VALUES ($1, $2, NULL, $3, $4, NULL)""",
                    Guid.NewGuid(), job.Value, assigned.Value, at);
            });
        return job;
    }

    private static void Insert(SqliteTransaction transaction, string sql, params object[] values)
    {
        using var insert = transaction.Connection!.CreateCommand();
        insert.Transaction = transaction;
#pragma warning disable CA2100 // Only this file's own text reaches it.
        insert.CommandText = sql;
#pragma warning restore CA2100
        for (var i = 0; i < values.Length; i++)
        {
            insert.Parameters.AddWithValue($"${i + 1}", values[i]);
        }

        insert.ExecuteNonQuery();
    }
}
