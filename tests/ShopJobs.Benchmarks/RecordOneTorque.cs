using BenchmarkDotNet.Attributes;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Benchmarks;

/// <summary>
/// One torque recorded: decided, appended and on the disk. The floor is a prepared insert, by hand, of the same two rows
/// (entry and outcome) and the same head, with the same durability, on a connection of its own and without any trigger.
/// </summary>
public class RecordOneTorque : IDisposable
{
    private const int Pulls = 20;
    private BenchShop shop = null!;
    private RawRows raw = null!;
    private CarId car;
    private JobId job;

    [GlobalSetup]
    public void Open()
    {
        shop = new BenchShop(Directory.CreateTempSubdirectory("shopjobs-bench").FullName);
        raw = new RawRows(shop);
    }

    // For both, as BenchmarkDotNet compares only what is run alike.
    [IterationSetup]
    public void AnotherCar() => (car, job) = shop.CarWithNutsOn();

    [Benchmark(Baseline = true, Description = "floor: prepared insert of the same rows", OperationsPerInvoke = Pulls)]
    public void Floor()
    {
        for (var i = 0; i < Pulls; i++)
        {
            raw.Insert();
        }
    }

    [Benchmark(Description = "one torque: decide, append, durable commit", OperationsPerInvoke = Pulls)]
    public void Recorded()
    {
        for (var i = 0; i < Pulls; i++)
        {
            shop.DoCounting(car, shop.Pull(job, i));
        }
    }

    [GlobalCleanup]
    public void Dispose()
    {
        GC.SuppressFinalize(this);
        raw?.Dispose();
        shop?.Dispose();
    }
}
