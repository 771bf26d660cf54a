using System.CommandLine;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Components.Procedures;

namespace ShopJobs.Web.Admin;

/// <summary>What <c>lint</c> and <c>import</c> share: reading files and printing problems.</summary>
internal static class DocumentVerbs
{
    internal static Argument<string[]> FilesArgument() => new("files")
    {
        Description = "Joint register and procedures, as YAML.",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>The files in their order; null, with the reason printed, when one can't be read.</summary>
    internal static async Task<IReadOnlyList<DocumentFile>?> ReadAsync(
        IReadOnlyCollection<string> paths, TextWriter output, CancellationToken cancellation)
    {
        var files = new List<DocumentFile>();
        var unread = 0;
        foreach (var path in paths.Distinct())
        {
            try
            {
                await using var content = File.OpenRead(path);
                files.Add(await DocumentFile.ReadAsync(path, content, cancellation));
            }
            catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
            {
                await output.WriteLineAsync($"{path}:1:1: error: The file can't be read — {wrong.Message}");
                unread++;
            }
        }

        return unread == 0 ? files : null;
    }

    internal static async Task PrintAsync(string file, IEnumerable<DocumentProblem> problems, TextWriter output)
    {
        foreach (var problem in problems)
        {
            await output.WriteLineAsync($"{file}:{problem}");
        }
    }
}
