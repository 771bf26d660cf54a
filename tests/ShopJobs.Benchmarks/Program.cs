using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using ShopJobs.Benchmarks;

// A long run of the histories by which the rules are proved: "histories 1000000", or a part of it: "histories 200000 400000" plays
// 200,000 from the 400,000th on.
if (args is ["histories", var given, .. var from])
{
    return HistoriesVerb.Run(Whole(given), from.Length == 0 ? 0 : Whole(from[0]), Console.Out);
}

// What whoever records waits for while others watch: "watchers", or "watchers 50" for 50 cars each.
if (args is ["watchers", .. var rounds])
{
    return WatchersVerb.Run(rounds.Length == 0 ? 20 : Whole(rounds[0]), Console.Out);
}

// Each figure stands beside its floor, measured in the same run: the column "Ratio" is what the budgets are about.
var config = ManualConfig.Create(DefaultConfig.Instance)
    .AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance).WithIterationCount(15).WithWarmupCount(3))
    .HideColumns(Column.Error, Column.RatioSD);
BenchmarkSwitcher.FromAssembly(typeof(RecordOneTorque).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args, config);
return 0;

static int Whole(string number) => int.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
