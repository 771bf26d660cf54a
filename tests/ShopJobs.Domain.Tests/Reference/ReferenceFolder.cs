namespace ShopJobs.Domain.Tests.Reference;

/// <summary>
/// Where the published rows lie: beside the tests, or in the folder that the environment variable SHOPJOBS_REFERENCE names, which
/// has the same sub-folders and file names.
/// </summary>
internal static class ReferenceFolder
{
    public static string Root => Environment.GetEnvironmentVariable("SHOPJOBS_REFERENCE") is { Length: > 0 } other
        ? other
        : Path.Combine(AppContext.BaseDirectory, "Reference");

    public static IReadOnlyList<ReferenceRow> Read(string folder, string file) => CsvTable.Read(Path.Combine(Root, folder, file));
}
