using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Reference.Statements;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Scatter of preload: statistics, windows and the tables behind them.</summary>
internal static class PreloadChecks
{
    public static void Statistics(ReferenceRow row)
    {
        var list = row["inputs"].Split(':');
        var forces = list[1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => Force.FromPoundsForce(double.Parse(n, CultureInfo.InvariantCulture)));
        var sample = new PreloadSample(forces);
        row.Holds(sample.Count == int.Parse(ReferenceRow.NumbersIn(list[0])[0], CultureInfo.InvariantCulture), $"{sample.Count} readings");
        var value = row["note"] switch
        {
            "mean" => sample.Mean,
            "sd" or "standard deviation" => sample.StandardDeviation,
            "max" => sample.Greatest,
            "min" => sample.Least,
            var note => throw new InvalidDataException($"{row.Id}: statistic \"{note}\"."),
        };
        WorkedExampleChecks.List(row, "published", value.PoundsForce);
    }

    public static void Variation(ReferenceRow row)
    {
        var end = row.NamedOrNull("inputs", "max") is not null ? "max" : "min";
        WorkedExampleChecks.List(row, "published", PreloadSample.Variation(
            RowQuantity.Force(row, "inputs", end, "lbf"), RowQuantity.Force(row, "inputs", "mean", "lbf")));
    }

    /// <summary>The factor printed with the example is the one computed here for its number of readings, to the printed digits.</summary>
    public static void ToleranceLimit(ReferenceRow row)
    {
        var factor = ToleranceFactor.NinetyOfAllWith95Confidence((int)row.Named("inputs", "n"));
        row.Near("factor", row.Named("inputs", "s"), factor, ReferenceRow.HalfDigit(row.Printed("inputs", "s")));
        WorkedExampleChecks.List(row, "published", factor * row.Named("inputs", "sd") / row.Named("inputs", "mean"));
    }

    public static void Factor9095(ReferenceRow row) =>
        WorkedExampleChecks.List(row, "published", ToleranceFactor.NinetyOfAllWith95Confidence((int)row.Named("inputs", "m")));

    /// <summary>By a share of the yield load ("T/KD; least; greatest"), or by a torque with its tolerance ("nominal; greatest; least").</summary>
    public static void Window(ReferenceRow row)
    {
        if (row.NamedOrNull("inputs", "Fty") is not null)
        {
            var nominal = Force.FromNewtons(
                RowQuantity.Area(row, "inputs", "At").SquareMillimeters * RowQuantity.Pressure(row, "inputs", "Fty").Megapascals)
                * row.Named("inputs", "preload") / 100;
            var window = PreloadWindow.Around(nominal, row.Named("inputs", "uncertainty") / 100, (row.NamedOrNull("inputs", "relaxation") ?? 0) / 100);
            WorkedExampleChecks.List(row, "published", window.Nominal.PoundsForce, window.Least.PoundsForce, window.Greatest.PoundsForce);
            return;
        }

        var torque = RowQuantity.Torque(row, "inputs", "T");
        var tolerance = Torque.From(
            double.Parse(System.Text.RegularExpressions.Regex.Match(row["inputs"], @"T=[0-9.]+\+-(?<w>[0-9.]+)").Groups["w"].Value, CultureInfo.InvariantCulture),
            UnitsNet.Units.TorqueUnit.NewtonMeter);
        var byFactor = PreloadWindow.ByNutFactor(
            torque - tolerance, torque + tolerance, row.Named("inputs", "K"), RowQuantity.Length(row, "inputs", "d"), row.Named("inputs", "u") / 100);
        WorkedExampleChecks.List(row, "published", byFactor.Nominal.Newtons, byFactor.Greatest.Newtons, byFactor.Least.Newtons);
    }

    public static void Scatter(ReferenceRow row) => WorkedExampleChecks.List(
        row, "published", TighteningFactor.LeastLoad(RowQuantity.Force(row, "inputs", "FMmax", "kN"), row.Named("inputs", "alphaA")).Kilonewtons);

    public static void AlphaFromScatter(ReferenceRow row) =>
        WorkedExampleChecks.List(row, "published", TighteningFactor.FromScatter(row.Named("inputs", "scatter") / 100));

    public static void UncertaintyTable(ReferenceRow row)
    {
        var held = PreloadUncertainty.Published.FirstOrDefault(u => u.Method == row["inputs"]);
        row.Holds(held is not null, $"\"{row["inputs"]}\" is not held");
        row.Near("scatter", double.Parse(ReferenceRow.NumbersIn(row["published"])[0], CultureInfo.InvariantCulture), held!.Scatter * 100, 1e-9);
        row.Near("max/min", row.Named("computed", "min"), held.TighteningFactor, ReferenceRow.HalfDigit(row.Printed("computed", "min")));
    }
}
