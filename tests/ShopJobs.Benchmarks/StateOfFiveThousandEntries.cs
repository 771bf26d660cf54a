using BenchmarkDotNet.Attributes;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Benchmarks;

/// <summary>
/// A car's state from 5,000 stored entries: read, hashed, decoded and folded, nothing cached. The floor is reading the same
/// envelopes from the same file and hashing them, and nothing else.
/// </summary>
public class StateOfFiveThousandEntries : IDisposable
{
    private const int Entries = 5000;
    private BenchShop shop = null!;
    private SqliteConnection raw = null!;
    private CarId car;

    [GlobalSetup]
    public void Open()
    {
        shop = new BenchShop(Directory.CreateTempSubdirectory("shopjobs-bench").FullName);
        (car, var job) = shop.CarWithNutsOn();
        var cycle = 1;
        while (shop.Desk.Read(car, null).State.Number < Entries)
        {
            for (var i = 0; i < 20; i++)
            {
                shop.DoCounting(car, shop.Pull(job, i) with { Cycle = cycle });
            }

            var nuts = Enumerable.Range(0, 20).Select(i => shop.Pull(job, i).Position).ToList();
            shop.Do(car, new OpenPositions(nuts, job, null));
            shop.Do(car, new HandTighten(job, "wheel-nuts", nuts, []));
            cycle++;
        }

        raw = new SqliteConnection($"Data Source={shop.Folder.Database};Mode=ReadOnly");
        raw.Open();
    }

    [Benchmark(Baseline = true, Description = "floor: read and hash the envelopes")]
    public int Floor()
    {
        using var command = raw.CreateCommand();
        command.CommandText = "SELECT envelope FROM entries WHERE owner_kind = 'car' AND owner = $owner ORDER BY number LIMIT 5000";
        command.Parameters.AddWithValue("$owner", car.Value);
        using var rows = command.ExecuteReader();
        var head = default(Head);
        while (rows.Read())
        {
            head = head.Next(rows.GetFieldValue<byte[]>(0));
        }

        return (int)head.Number;
    }

    [Benchmark(Description = "5,000 stored entries to CarState")]
    public long State()
    {
        var snapshots = new LogbookSnapshots(shop.Service<LogbookDatabase>(), new FoldCache(), TimeProvider.System);
        return snapshots.Read(reader => reader.Fold(Folders.LogbookOf(car), Folders.Car)).Number;
    }

    [GlobalCleanup]
    public void Dispose()
    {
        GC.SuppressFinalize(this);
        raw?.Dispose();
        shop?.Dispose();
    }
}
