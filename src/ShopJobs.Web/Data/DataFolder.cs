namespace ShopJobs.Web.Data;

/// <summary>The folder that holds the shop: the database file and the keys that protect its cookies.</summary>
public sealed class DataFolder
{
    /// <summary>Name of the setting; a relative path is taken from the content root.</summary>
    public const string Setting = "Data:Folder";

    /// <summary>Makes the folder when it is not there.</summary>
    public DataFolder(string contentRoot, string? folder)
    {
        Root = RootOf(contentRoot, folder);
        Directory.CreateDirectory(Root);
        Keys = Directory.CreateDirectory(Path.Combine(Root, "keys"));
    }

    public string Root { get; }

    public DirectoryInfo Keys { get; }

    public string Database => DatabaseIn(Root);

    /// <summary>Held open by the one process that brings the database up to date; empty, and left where it is.</summary>
    public string MigrationLock => Database + ".up-to-date";

    /// <summary>Where the database file is, or would be; makes nothing.</summary>
    public static string DatabaseOf(string contentRoot, string? folder) => DatabaseIn(RootOf(contentRoot, folder));

    private static string RootOf(string contentRoot, string? folder) =>
        Path.GetFullPath(string.IsNullOrWhiteSpace(folder) ? "shop-data" : folder, contentRoot);

    private static string DatabaseIn(string root) => Path.Combine(root, "shop.db");
}
