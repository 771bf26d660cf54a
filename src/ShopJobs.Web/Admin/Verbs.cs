using System.CommandLine;

namespace ShopJobs.Web.Admin;

/// <summary>What the program does besides serving: one file a verb, registered here.</summary>
internal static class Verbs
{
    private static readonly Func<Command>[] All =
    [
        ImportVerb.Command,
        LintVerb.Command,
        ResetPinVerb.Command,
        VerifyVerb.Command,
    ];

    /// <summary>True when the first word is a verb or a call for help; anything else starts the shop.</summary>
    internal static bool AskedFor(string[] args) =>
        args is [var first, ..] && (first is "-h" or "-?" or "--help" or "--version" || All.Any(verb => verb().Name == first));

    internal static Task<int> RunAsync(string[] args)
    {
        var root = new RootCommand(
            "ShopJobs: the build shop's logbook. Without a verb it serves the shop; --urls says where, --Data:Folder holds the shop.");
        foreach (var verb in All)
        {
            root.Subcommands.Add(verb());
        }

        return root.Parse(args).InvokeAsync();
    }
}
