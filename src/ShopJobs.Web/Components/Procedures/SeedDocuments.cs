namespace ShopJobs.Web.Components.Procedures;

/// <summary>The invented register and procedures that come with the program, for the demo shop: one batch for <see cref="ProcedureImport"/>.</summary>
public static class SeedDocuments
{
    private const string Folder = "seed/";

    /// <summary>Every document, register and procedures together.</summary>
    public static IReadOnlyList<DocumentFile> All { get; } =
    [
        .. typeof(SeedDocuments).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(Read),
    ];

    private static DocumentFile Read(string name)
    {
        using var content = typeof(SeedDocuments).Assembly.GetManifestResourceStream(name)!;
        using var bytes = new MemoryStream();
        content.CopyTo(bytes);
        return new DocumentFile(Path.GetFileName(name), bytes.ToArray());
    }
}
