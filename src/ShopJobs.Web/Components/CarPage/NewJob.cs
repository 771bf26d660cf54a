using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>A procedure as it could be put on a car now.</summary>
/// <param name="Places">Places it can be put on.</param>
/// <param name="Against">Why it does not go on this car, or not at some of its places.</param>
public sealed record Offer(Procedure Procedure, string ProcedureDigest, string RegisterDigest, IReadOnlyList<string> Places, IReadOnlyList<SaidHold> Against);

/// <summary>Puts procedures on cars: the entry and the job's row stand or fall together.</summary>
public sealed class NewJob(CarDesk desk, Documents documents, LogbookSnapshots snapshots, WhoIsHere here, ShopClock clock)
{
    /// <summary>Longest text of what the customer asked for.</summary>
    public const int AskedForLength = 2000;

    /// <summary>Reads a procedure for this car by the register in force; null before there is a register, and where it fits no car of it.</summary>
    public Offer? Read(CarId car, string procedureDigest)
    {
        var (state, now) = desk.Read(car, null) is var reading ? (reading.State, reading.Now) : default;
        return snapshots.Read(reader =>
        {
            if (Documents.CurrentRegister(reader) is not { } register
                || (documents.Read(reader, procedureDigest, register, state.Joints.Follows).Value ?? documents.Read(reader, procedureDigest, register).Value) is not { } procedure)
            {
                return null;
            }

            var possible = PlacedProcedure.PlacesOf(procedure, now.Register);
            var against = Decider.AgainstFit(state, procedure, possible, now).ToList();
            var places = against.Exists(point => point.Joint is null) ? [] : possible.Where(place => against.TrueForAll(point => point.Joint!.Value.Place != place));
            return new Offer(procedure, procedureDigest, register, [.. places], [.. against.Select(now.Say)]);
        });
    }

    /// <summary>Puts it on.</summary>
    /// <param name="askedFor">What the customer asked for, in their words.</param>
    public async Task<DeskAnswer> StartAsync(
        CarId car, Offer offer, IReadOnlyList<string> places, string askedFor, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(offer);
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return DeskAnswer.Failed(ShopChange.Locked);
        }

        var job = new JobId(Guid.NewGuid());
        return await desk.RunAsync(
            car,
            new CommandId(Guid.NewGuid()),
            present,
            new StartJob(job, offer.Procedure, offer.ProcedureDigest, offer.RegisterDigest, places),
            rows: transaction => Insert(transaction, job, car, offer, places, askedFor, present.Person),
            cancellation: cancellation);
    }

    private void Insert(
        SqliteTransaction transaction, JobId job, CarId car, Offer offer, IReadOnlyList<string> places, string askedFor, PersonId by)
    {
        using var insert = transaction.Connection!.CreateCommand();
        insert.Transaction = transaction;
        insert.CommandText = """
            INSERT INTO Jobs (Id, CarId, ProcedureDigest, RegisterDigest, Places, Title, AskedFor, StartedAt, StartedBy)
            VALUES ($id, $car, $procedure, $register, $places, $title, $asked, $at, $by)
            """;
        insert.Parameters.AddWithValue("$id", job.Value);
        insert.Parameters.AddWithValue("$car", car.Value);
        insert.Parameters.AddWithValue("$procedure", offer.ProcedureDigest);
        insert.Parameters.AddWithValue("$register", offer.RegisterDigest);
        insert.Parameters.AddWithValue("$places", string.Join(',', places));
        insert.Parameters.AddWithValue("$title", offer.Procedure.Title);
        insert.Parameters.AddWithValue("$asked", askedFor);
        insert.Parameters.AddWithValue("$at", clock.Now);
        insert.Parameters.AddWithValue("$by", by.Value);
        insert.ExecuteNonQuery();
    }
}
