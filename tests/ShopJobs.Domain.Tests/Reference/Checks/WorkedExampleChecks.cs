namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Examples whose inputs are told as k=v in words: which check each kind has.</summary>
internal static class WorkedExampleChecks
{
    public static Action<ReferenceRow>? Of(string kind) => kind switch
    {
        "statistics of preload" => PreloadChecks.Statistics,
        "preload variation" => PreloadChecks.Variation,
        "tolerance limit" => PreloadChecks.ToleranceLimit,
        "90/95 factor" => PreloadChecks.Factor9095,
        "preload window" => PreloadChecks.Window,
        "preload scatter" => PreloadChecks.Scatter,
        "alphaA from scatter" => PreloadChecks.AlphaFromScatter,
        "preload uncertainty table" => PreloadChecks.UncertaintyTable,
        "nut factor from test" => NutFactorChecks.FromTest,
        "nut factor table" or "nut factor range" => NutFactorChecks.Published,
        "torque from friction" => JointChecks.TorqueFromFriction,
        "joint factors" => JointChecks.Factors,
        "loosening torque" => JointChecks.Loosening,
        "angle tightening" => JointChecks.AngleTightening,
        "embedding loss" => JointChecks.EmbeddingLoss,
        "wheel stud stack" => JointChecks.WheelStud,
        "thread stripping insert" => StrippingChecks.Insert,
        "internal thread stripping area" => StrippingChecks.NutThread,
        "minimum engagement" => StrippingChecks.MinimumEngagement,
        _ when kind.StartsWith("jam nut drive", StringComparison.Ordinal) => JointChecks.JamNuts,
        _ => null,
    };

    /// <summary>The row's own relative tolerance, else half a unit of the printed digit.</summary>
    public static double Tolerance(ReferenceRow row, string printed)
    {
        var value = Math.Abs(double.Parse(printed, System.Globalization.CultureInfo.InvariantCulture));
        return row["rel_tol"].Length > 0 ? value * row.Number("rel_tol") : ReferenceRow.HalfDigit(printed);
    }

    /// <summary>Compares the figures of a list "a;b;c" with those computed, each within the row's tolerance.</summary>
    public static void List(ReferenceRow row, string column, params double[] computed)
    {
        var printed = row[column].Split(';');
        row.Holds(printed.Length == computed.Length, $"{printed.Length} figures are printed and {computed.Length} computed");
        for (var i = 0; i < printed.Length; i++)
        {
            row.Near($"figure {i + 1}", double.Parse(printed[i], System.Globalization.CultureInfo.InvariantCulture), computed[i], Tolerance(row, printed[i]));
        }
    }

    /// <summary>Compares the figure behind "name=" with the one computed, within the row's tolerance.</summary>
    public static void Named(ReferenceRow row, string name, double computed) =>
        row.Near(name, row.Named("computed", name), computed, Tolerance(row, row.Printed("computed", name)));
}
