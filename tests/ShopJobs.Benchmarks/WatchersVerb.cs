using System.Diagnostics;
using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Benchmarks;

/// <summary>
/// How long whoever records a pull waits for the answer while screens watch the shop. A screen is what a floor tablet is on the server: at
/// a notice it reads every car and judges it. Each figure stands beside two floors of the same run: the same rows inserted by hand, and
/// the same pull with nobody watching.
/// </summary>
internal static class WatchersVerb
{
    private const int Cars = 30;
    private const int Pulls = 20;
    private static readonly int[] Crowds = [0, 1, 10, 20];

    /// <summary>Measures and prints; gives 0.</summary>
    /// <param name="rounds">Cars pulled for each number of watchers.</param>
    public static int Run(int rounds, TextWriter output)
    {
        using var shop = new BenchShop(Directory.CreateTempSubdirectory("shopjobs-bench").FullName);
        var shown = Enumerable.Range(0, Cars).Select(_ => shop.CarWithNutsOn().Car).ToList();
        using var raw = new RawRows(shop);
        Pulled(shop);
        var floor = Enumerable.Range(0, rounds * Pulls).Select(_ => Timed(raw.Insert)).ToList();
        output.WriteLine($"{"",-22}{"p50",10}{"p95",10}{"x by hand",12}{"x unwatched",12}");
        Write(output, "rows by hand", floor, floor, null);
        List<TimeSpan>? unwatched = null;
        foreach (var crowd in Crowds)
        {
            var screens = Enumerable.Range(0, crowd).Select(_ => new Screen(shop, shown)).ToList();
            var took = Enumerable.Range(0, rounds).SelectMany(_ => Pulled(shop)).ToList();
            screens.ForEach(screen => screen.Dispose());
            unwatched ??= took;
            Write(output, $"a pull, {crowd} watching", took, floor, unwatched);
            if (crowd > 0)
            {
                output.WriteLine($"{"",-22}each screen read the shop {screens.Average(screen => screen.Readings).ToString("F0", CultureInfo.InvariantCulture)} times in {took.Count} pulls");
            }
        }

        return 0;
    }

    // A car of its own, so that every pull counts; only the pulls are timed.
    private static List<TimeSpan> Pulled(BenchShop shop)
    {
        var (car, job) = shop.CarWithNutsOn();
        return [.. Enumerable.Range(0, Pulls).Select(index => Timed(() => shop.DoCounting(car, shop.Pull(job, index))))];
    }

    private static TimeSpan Timed(Action act)
    {
        var started = Stopwatch.GetTimestamp();
        act();
        return Stopwatch.GetElapsedTime(started);
    }

    private static void Write(TextWriter output, string what, List<TimeSpan> took, List<TimeSpan> floor, List<TimeSpan>? unwatched) => output.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{what,-22}{At(took, 0.5),7:F2} ms{At(took, 0.95),7:F2} ms{At(took, 0.5) / At(floor, 0.5),12:F1}{(unwatched is null ? "" : $"{At(took, 0.5) / At(unwatched, 0.5),12:F2}")}"));

    private static double At(List<TimeSpan> took, double share) => took.Order().ElementAt((int)(share * (took.Count - 1))).TotalMilliseconds;

    private sealed class Screen : IDisposable
    {
        private readonly IDisposable subscription;
        private readonly BenchShop shop;
        private readonly IReadOnlyList<CarId> cars;

        public Screen(BenchShop shop, IReadOnlyList<CarId> cars)
        {
            (this.shop, this.cars) = (shop, cars);
            subscription = shop.Service<LogbookNotices>().Subscribe(_ => Read());
        }

        public int Readings { get; private set; }

        public void Dispose() => subscription.Dispose();

        private void Read()
        {
            foreach (var reading in shop.Desk.ReadAll(cars, null))
            {
                CarGlance.Of(reading.State, reading.Now, reading.Tools.Values, (_, _) => false);
            }

            Readings++;
        }
    }
}
