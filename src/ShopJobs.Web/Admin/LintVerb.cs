using System.CommandLine;
using System.Globalization;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Admin;

/// <summary>Checks documents without importing them: every problem with its line; 1 when there is an error.</summary>
internal static class LintVerb
{
    internal static Command Command()
    {
        var files = DocumentVerbs.FilesArgument();
        var register = new Option<string?>("--register")
        {
            Description = "Joint register to check procedures against; a register among the files, else the shop's, when not given.",
        };
        var data = VerbServices.DataOption();
        var command = new Command("lint", "Check joint registers and procedures, and print every problem with its line.") { files, register, data };
        command.SetAction((parsed, cancellation) => RunAsync(
            parsed.GetValue(files)!, parsed.GetValue(register), parsed.GetValue(data), parsed.InvocationConfiguration.Output, cancellation));
        return command;
    }

    internal static async Task<int> RunAsync(
        IReadOnlyList<string> paths, string? registerPath, string? folder, TextWriter output, CancellationToken cancellation)
    {
        var asked = registerPath is null ? paths : [registerPath, .. paths];
        if (await DocumentVerbs.ReadAsync([.. asked], output, cancellation) is not { } files)
        {
            return 1;
        }

        var problems = new List<DocumentProblem>();
        var registers = files.Where(file => JointRegisterDocument.IsOne(file.Bytes, cancellation) || file.Name == registerPath)
            .ToDictionary(file => file.Name, file => JointRegisterDocument.Load(file.Bytes, file.Name, cancellation));
        foreach (var loaded in registers.Values)
        {
            problems.AddRange(loaded.Problems);
            await DocumentVerbs.PrintAsync(loaded.Name, loaded.Problems, output);
        }

        var procedures = files.Where(file => !registers.ContainsKey(file.Name)).ToList();
        var register = registers.Count > 0 ? registers.Values.First().Value : await OfShopAsync(folder, cancellation);
        if (register is null && procedures.Count > 0)
        {
            await output.WriteLineAsync("The procedures were not checked: there is no sound joint register. Name one with --register.");
            return 1;
        }

        foreach (var loaded in procedures.Select(file => ProcedureDocument.Load(file.Bytes, file.Name, register!, cancellation)))
        {
            problems.AddRange(loaded.Problems);
            await DocumentVerbs.PrintAsync(loaded.Name, loaded.Problems, output);
        }

        var cautions = problems.Count(problem => problem.IsCaution);
        await output.WriteLineAsync(string.Create(
            CultureInfo.InvariantCulture, $"{files.Count} files: {problems.Count - cautions} errors, {cautions} cautions."));
        return problems.Count > cautions ? 1 : 0;
    }

    /// <summary>The register of the shop in that folder; null when there is no shop or it has none.</summary>
    private static async Task<JointRegister?> OfShopAsync(string? folder, CancellationToken cancellation)
    {
        if (!File.Exists(VerbServices.DatabaseFile(folder)))
        {
            return null;
        }

        await using var services = await VerbServices.OpenAsync(folder, cancellation);
        using var database = new LogbookDatabase(VerbServices.DatabaseFile(folder));
        return new LogbookSnapshots(database, new FoldCache(), TimeProvider.System).Read(reader =>
            Documents.CurrentRegister(reader) is { } digest ? new Documents().Register(reader, digest) : null);
    }
}
