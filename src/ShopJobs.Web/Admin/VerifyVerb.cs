using System.CommandLine;
using System.Globalization;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Logbook.Verify;
using Command = System.CommandLine.Command;

namespace ShopJobs.Web.Admin;

/// <summary>Checks the logbooks without changing them: 0 when nothing is wrong, 1 otherwise.</summary>
internal static class VerifyVerb
{
    internal static Command Command()
    {
        var data = VerbServices.DataOption();
        var logbook = new Option<string?>("--logbook") { Description = "Only this logbook, such as car:6f9619ff-8b86-d011-b42d-00c04fc964ff." };
        var against = new Option<string?>("--against")
        {
            Description = "Number and hash of an entry of that logbook as printed or kept outside, such as 12:1f0c...; finds a cut end or a rewritten book.",
        };
        var command = new Command("verify", "Check that the logbooks were not changed outside the program.") { data, logbook, against };
        command.SetAction(parsed => Run(
            VerbServices.DatabaseFile(parsed.GetValue(data)),
            parsed.GetValue(logbook),
            parsed.GetValue(against),
            parsed.InvocationConfiguration.Output));
        return command;
    }

    internal static int Run(string file, string? logbook, string? against, TextWriter output)
    {
        if (Unclear(file, logbook, against) is { } unclear)
        {
            output.WriteLine(unclear);
            return 1;
        }

        try
        {
            var verifier = new LogbookVerifier(file, EntryCodec.KeysOf);
            var report = LogbookId.TryParse(logbook, out var only) ? verifier.Verify(only) : verifier.Verify();
            var misquoted = TryParseHead(against, out var quoted) ? verifier.VerifyAgainst(only, quoted) : null;
            LogbookProblem[] problems = [.. report.Problems, .. misquoted is null ? Array.Empty<LogbookProblem>() : [misquoted]];
            Print(report, problems, against is not null, output);
            return problems.Length == 0 ? 0 : 1;
        }
        catch (SqliteException e)
        {
            output.WriteLine($"{file} can't be read: {e.Message}");
            return 1;
        }
    }

    private static string? Unclear(string file, string? logbook, string? against) => (logbook, against) switch
    {
        _ when !File.Exists(file) => $"There is no shop at {file}. Name its folder with --data.",
        ({ } text, _) when !LogbookId.TryParse(text, out _) => $"\"{text}\" names no logbook: write car:, tool: or shop: and its id.",
        (null, { }) => "--against compares one logbook: name it with --logbook.",
        (_, { } text) when !TryParseHead(text, out _) => $"\"{text}\" is no entry: write its number, a colon and the 64 digits of its hash.",
        _ => null,
    };

    private static void Print(VerifyReport report, LogbookProblem[] problems, bool compared, TextWriter output)
    {
        foreach (var (logbook, head) in report.Heads.OrderBy(head => head.Key.ToString(), StringComparer.Ordinal))
        {
            output.WriteLine($"{logbook} {head.Number}:{head.Hash}");
        }

        foreach (var problem in problems)
        {
            output.WriteLine(problem);
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{report.Heads.Count} logbooks, {report.Contents} contents, {report.Erased} erased: {problems.Length} problems."));
        if (!compared)
        {
            output.WriteLine("This shows that what is there fits together. A cut end or a wholly rewritten book only shows with --against.");
        }
    }

    private static bool TryParseHead(string? text, out Head head)
    {
        head = default;
        if (text?.Split(':') is not [var number, var hash]
            || !long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var entry)
            || !EntryHash.TryParse(hash, out var value))
        {
            return false;
        }

        head = new Head(entry, value);
        return true;
    }
}
