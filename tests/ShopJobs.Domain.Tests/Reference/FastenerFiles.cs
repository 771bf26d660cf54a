using ShopJobs.Domain.Tests.Reference.Checks;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>The files of published rows on fasteners.</summary>
internal static class FastenerFiles
{
    private const string Folder = "fasteners";

    public static readonly ReferenceFile Threads = new(
        Folder, "threads.csv", row => row["series"], _ => ThreadChecks.Geometry, _ => ["d", "pitch", "d2", "d3", "D1", "As"]);

    public static readonly ReferenceFile ThreadLimits = new(
        Folder, "thread_limits_6g.csv", _ => "6g limits", _ => ThreadChecks.Limits6g, _ => ["d_max", "d_min", "d2_max", "d2_min"]);

    public static readonly ReferenceFile Units = new(
        Folder, "units.csv", row => row["exact"].StartsWith("yes", StringComparison.Ordinal) ? "exact factor" : "rounded factor", _ => UnitChecks.Factor,
        _ => ["factor"]);

    public static readonly ReferenceFile Grades = new(Folder, "grades.csv", row => row["kind"], GradeChecks.Of, _ => ["value"]);

    public static readonly ReferenceFile TorqueTables = new(
        Folder, "torque_tables.csv", row => row["table"], TorqueTableChecks.Of, TorqueTableChecks.Checked);

    public static readonly ReferenceFile Wrench = new(
        Folder, "wrench.csv", row => row["kind"], WrenchChecks.Of, row => [row["published"].Length > 0 ? "published" : "computed"]);

    public static readonly ReferenceFile WorkedExamples = new(
        Folder, "worked_examples.csv", row => row["kind"], WorkedExampleChecks.Of, row => [row["published"].Length > 0 ? "published" : "computed"]);

    public static readonly ReferenceFile Rules = new(
        Folder, "rules.csv", row => row["kind"], RuleChecks.Of, row => [row["value"].Length > 0 ? "value" : "rule"]);

    public static IReadOnlyList<ReferenceFile> All { get; } =
        [Threads, ThreadLimits, Units, Grades, TorqueTables, Wrench, WorkedExamples, Rules];
}
