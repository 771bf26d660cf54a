using System.IO.Compression;
using System.Reflection;

namespace ShopJobs.Web.Tests.Data;

/// <summary>The stored shop of an earlier program, and what this program is meant to say differently of it.</summary>
internal static class OlderShop
{
    /// <summary>The instant at which the program that wrote it looked at its cars.</summary>
    public static readonly DateTimeOffset LookedAt = new(2026, 3, 12, 8, 0, 0, TimeSpan.Zero);

    /// <summary>
    /// What newer rules change: "- " and a line as it was, "+ " and a line as it is now; first all that went, in the order of the
    /// stored file, then all that came. Each block says in a comment which rule changed it.
    /// </summary>
    public static readonly IReadOnlyList<string> Differences =
    [
        // Nuts count only on studs that count: five studs of Blue are open.
        "- Blue | release Move: never given; waits for: NotAtStage 10",
        "- Blue | release Road: never given; waits for: NotAtStage 10, StepNotSigned 37",
        "- Blue | release Track: never given; waits for: JointNotMadeHere 3, NotAtStage 10, StepNotSigned 37",
        // A joint that was opened again takes the sign-offs of the steps before its torque with it.
        "- Orange | release Move: never given; waits for: Held 1, NotAtStage 10, StepToReconfirm 1",
        "- Orange | release Road: never given; waits for: Held 1, NotAtStage 10, StepNotSigned 14, StepToReconfirm 1",
        "- Orange | release Track: never given; waits for: Held 1, JointNotMadeHere 2, NotAtStage 10, StepNotSigned 14, StepToReconfirm 1",
        "- Orange | step P5 by-hand@front-right: Signed",
        "- Orange | step P5 faces@front-right: Signed",
        "- Orange | step P5 snug@front-right: Signed",
        // A hold suspends a release; only an opening or a pull ends it.
        "- White | release Road: given by #78, ended by #87; waits for: Held 5",
        // The same lines as they are now.
        "+ Blue | release Move: never given; waits for: NotAtStage 10, RidesOnLoose 5",
        "+ Blue | release Road: never given; waits for: NotAtStage 10, RidesOnLoose 5, StepNotSigned 37",
        "+ Blue | release Track: never given; waits for: JointNotMadeHere 3, NotAtStage 10, RidesOnLoose 5, StepNotSigned 37",
        "+ Orange | release Move: never given; waits for: Held 1, NotAtStage 10, StepToReconfirm 4",
        "+ Orange | release Road: never given; waits for: Held 1, NotAtStage 10, StepNotSigned 14, StepToReconfirm 4",
        "+ Orange | release Track: never given; waits for: Held 1, JointNotMadeHere 2, NotAtStage 10, StepNotSigned 14, StepToReconfirm 4",
        "+ Orange | step P5 by-hand@front-right: Void",
        "+ Orange | step P5 faces@front-right: Void",
        "+ Orange | step P5 snug@front-right: Void",
        "+ White | release Road: given by #78, suspended by #91; waits for: Held 5",
    ];

    /// <summary>The database file, unpacked.</summary>
    public static Stream Database() => new GZipStream(Open("shop.db.gz"), CompressionMode.Decompress);

    /// <summary>What was said of its cars.</summary>
    public static IReadOnlyList<string> Standings() => Lines("standings.txt");

    /// <summary>Its logbooks with number and hash of their newest entries.</summary>
    public static IReadOnlyList<string> Heads() => Lines("heads.txt");

    private static string[] Lines(string name)
    {
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static Stream Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream($"older-shop/{name}")
        ?? throw new InvalidOperationException($"The stored shop has no {name}.");
}
