using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using ShopJobs.Benchmarks;

// A long run of the histories by which the rules are proved: "histories 1000000".
if (args is ["histories", var given, ..])
{
    return HistoriesVerb.Run(int.Parse(given, System.Globalization.CultureInfo.InvariantCulture), Console.Out);
}

// Each figure stands beside its floor, measured in the same run: the column "Ratio" is what the budgets are about.
var config = ManualConfig.Create(DefaultConfig.Instance)
    .AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance).WithIterationCount(15).WithWarmupCount(3))
    .HideColumns(Column.Error, Column.RatioSD);
BenchmarkSwitcher.FromAssembly(typeof(RecordOneTorque).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args, config);
return 0;
