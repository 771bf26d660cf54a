using System.CommandLine;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Admin;

/// <summary>Takes documents into the shop, all or none; 1 when there is an error.</summary>
internal static class ImportVerb
{
    internal static Command Command()
    {
        var files = DocumentVerbs.FilesArgument();
        var data = VerbServices.DataOption();
        var command = new Command("import", "Import a joint register and procedures into the shop, all of them or none.") { files, data };
        command.SetAction((parsed, cancellation) => RunAsync(
            parsed.GetValue(files)!, parsed.GetValue(data), parsed.InvocationConfiguration.Output, cancellation));
        return command;
    }

    internal static async Task<int> RunAsync(IReadOnlyList<string> paths, string? folder, TextWriter output, CancellationToken cancellation)
    {
        if (await DocumentVerbs.ReadAsync([.. paths], output, cancellation) is not { } files)
        {
            await output.WriteLineAsync("Nothing was imported.");
            return 1;
        }

        await using var services = await VerbServices.OpenAsync(folder, cancellation);
        var import = new ProcedureImport(
            services.GetRequiredService<IDbContextFactory<ShopDbContext>>(), services.GetRequiredService<TimeProvider>());
        var report = await import.ImportAsync(files, by: null, cancellation: cancellation);
        foreach (var document in report.Documents)
        {
            await DocumentVerbs.PrintAsync(document.Name, document.Problems, output);
        }

        foreach (var document in report.Documents)
        {
            await output.WriteLineAsync(document.Words);
        }

        if (!report.IsTaken)
        {
            await output.WriteLineAsync("Nothing was imported.");
        }

        return report.IsTaken ? 0 : 1;
    }
}
