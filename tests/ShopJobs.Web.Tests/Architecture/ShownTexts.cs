using System.Text.RegularExpressions;

namespace ShopJobs.Web.Tests.Architecture;

/// <summary>A line of what a person may read.</summary>
public sealed record ShownText(string File, int Line, string Words);

/// <summary>What the sources show: texts in quotes, the markup of components, and the values of the demo's documents; no comments, no code.</summary>
internal static partial class ShownTexts
{
    public static IEnumerable<ShownText> All()
    {
        var root = RepositoryRoot();
        return
            from folder in new[] { "src", "seed" }
            from file in Directory.EnumerateFiles(Path.Combine(root, folder), "*.*", SearchOption.AllDirectories)
            where Path.GetExtension(file) is ".cs" or ".razor" or ".js" or ".yaml"
            where !file.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin" or "Migrations" or "lib")
            from text in Of(Path.GetFileName(file), File.ReadAllText(file))
            select text;
    }

    /// <summary>The lines of one file that show something.</summary>
    public static IEnumerable<ShownText> Of(string file, string source) =>
        Uncommented(file, source).Split('\n').Select((line, index) => new ShownText(file, index + 1, Shown(file, line))).Where(text => text.Words.Trim().Length > 0);

    // As many lines as before, so that a number still leads to its line.
    private static string Uncommented(string file, string source) => Path.GetExtension(file) switch
    {
        ".razor" => RazorComments().Replace(source, found => new string('\n', found.Value.Count(letter => letter == '\n'))),
        ".yaml" => YamlComments().Replace(source, ""),
        _ => source,
    };

    private static string Shown(string file, string line)
    {
        if (line.TrimStart().StartsWith("//", StringComparison.Ordinal) || line.TrimStart().StartsWith('*'))
        {
            return "";
        }

        return Path.GetExtension(file) switch
        {
            // Permitted ranges of a document are written with two points; its words are not.
            ".yaml" => YamlRanges().Replace(line, ""),
            ".razor" => Lists().Replace(line, ""),
            _ => string.Join(' ', Quoted().Matches(line).Select(found => found.Value)),
        };
    }

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ShopJobs.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository: there is no ShopJobs.sln above them.");
        }

        return folder.FullName;
    }

    [GeneratedRegex(@"@\*.*?\*@|<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex RazorComments();

    [GeneratedRegex(@"(^|\s)#.*$", RegexOptions.Multiline)]
    private static partial Regex YamlComments();

    [GeneratedRegex(@"(permitted|run-down-permitted): *[\d.,]+\.\.[\d.,]+")]
    private static partial Regex YamlRanges();

    [GeneratedRegex(@"\[[^\]""]*\.\.[^\]""]*\]")]
    private static partial Regex Lists();

    [GeneratedRegex(@"""(?:[^""\\]|\\.)*""|`[^`]*`|'[^']*'")]
    private static partial Regex Quoted();
}
