namespace ShopJobs.Domain.Tests.Reference;

/// <summary>
/// The published rows on fasteners, sorted into the kinds that are checked; a row of no kind is counted as not covered yet.
/// </summary>
public static class FastenerRows
{
    public const string Threads = "thread geometry and stress area";
    public const string Units = "units";
    public const string Strength = "strength of classes and grades";
    public const string Loads = "proof and ultimate loads";
    public const string AssemblyTorque = "assembly preload and torque";
    public const string ShortForm = "torque by nut factor";
    public const string ManualUnits = "torques printed in two units";
    public const string Adapters = "adapter settings";
    public const string ToolBands = "tool tolerance bands";
    public const string JamNuts = "driving a stud by two nuts";
    public const string Loosening = "loosening torque";
    public const string NutFactors = "nut factor from a test";

    private static readonly string[] Files = ["threads", "units", "grades", "torque_tables", "wrench", "worked_examples"];

    private static readonly Lazy<Dictionary<string, ReferenceRow>> Rows = new(() => Files
        .SelectMany(f => CsvTable.Read(Path.Combine(AppContext.BaseDirectory, "Reference", "fasteners", f + ".csv")))
        .ToDictionary(r => r.Id));

    public static IReadOnlyList<string> Kinds { get; } =
        [Threads, Units, Strength, Loads, AssemblyTorque, ShortForm, ManualUnits, Adapters, ToolBands, JamNuts, Loosening, NutFactors];

    public static IEnumerable<string> NotCovered => Rows.Value.Values.Where(r => KindOf(r) is null).Select(r => r.Id);

    /// <summary>The ids of one kind, as theory data.</summary>
    public static TheoryData<string> Of(string kind) => new(Rows.Value.Values.Where(r => KindOf(r) == kind).Select(r => r.Id));

    internal static ReferenceRow Row(string id) => Rows.Value[id];

    private static string? KindOf(ReferenceRow row) => row.Id[..3] switch
    {
        "thr" => Threads,
        "uni" => Units,
        "gra" when row["kind"] is "strength class" or "SAE J429 grade" => Strength,
        "gra" when row["kind"].StartsWith("proof load Fp", StringComparison.Ordinal) || row["kind"] == "min ultimate tensile load Fm" => Loads,
        "tor" when row["table"].StartsWith("VDI", StringComparison.Ordinal) => AssemblyTorque,
        "tor" when row["table"].StartsWith("SAE grade 2, K", StringComparison.Ordinal) => ShortForm,
        "tor" when row["M_unit"] == "lbf.ft;N.m" => ManualUnits,
        "wre" when row["kind"].StartsWith("extension adapter", StringComparison.Ordinal) => Adapters,
        "wre" when row["kind"] == "MPD band" => ToolBands,
        "wor" when row["kind"].StartsWith("jam nut drive", StringComparison.Ordinal) => JamNuts,
        "wor" when row["kind"] == "loosening torque" => Loosening,
        "wor" when row["kind"] == "nut factor from test" => NutFactors,
        _ => null,
    };
}
