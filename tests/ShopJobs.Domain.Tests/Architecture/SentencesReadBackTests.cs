using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Tests.Architecture;

/// <summary>Sentences are said and never read: what one says is known from the data it was made from.</summary>
public partial class SentencesReadBackTests
{
    [Fact]
    public void Nothing_in_the_sources_searches_or_cuts_a_sentence() =>
        Assert.Empty(
            from file in Directory.EnumerateFiles(Sources(), "*.*", SearchOption.AllDirectories)
            where file.EndsWith(".cs", StringComparison.Ordinal) || file.EndsWith(".razor", StringComparison.Ordinal)
            where !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
            from found in File.ReadLines(file).Select((line, index) => (Line: line.Trim(), Number: index + 1))
            where ReadsBack(found.Line)
            select $"{Path.GetFileName(file)}:{found.Number}: {found.Line}");

    [Theory]
    [InlineData("off.Why.StartsWith(\"as found\", StringComparison.Ordinal)")]
    [InlineData("point.Words.IndexOf($\" {number}\", StringComparison.Ordinal)")]
    [InlineData("problems.Any(problem => problem.What.StartsWith(\"table \", StringComparison.Ordinal))")]
    [InlineData("why.StartsWith(\"Not saved: \", StringComparison.Ordinal)")]
    [InlineData("message.Split(\". \", 2)")]
    [InlineData("var at = message.IndexOf(\". \", StringComparison.Ordinal);")]
    [InlineData("hold.Words[name.Length..]")]
    [InlineData("now.Say(point).Words.Contains(\"held\")")]
    [InlineData("problem.Replace(\"say so\", \"put a note\", StringComparison.Ordinal)")]
    [InlineData("caution.StartsWith(\"Clamp load\", StringComparison.Ordinal)")]
    public void A_sentence_read_back_is_found(string line) => Assert.True(ReadsBack(line));

    [Theory]
    [InlineData("name.StartsWith(\"setting:\", StringComparison.Ordinal)")]
    [InlineData("Placed.Procedure.Cautions.Contains(caution)")]
    [InlineData("var words = (text ?? \"\").Split(' ')")]
    public void Names_and_lists_may_be_searched(string line) => Assert.False(ReadsBack(line));

    private static bool ReadsBack(string line) => Reading().IsMatch(line);

    private static string Sources()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "ShopJobs.sln")))
        {
            at = at.Parent;
        }

        return Path.Combine(at?.FullName ?? throw new DirectoryNotFoundException("The repository is not above the tests."), "src");
    }

    [GeneratedRegex(@"(?<![\w.])(?:[\w!?()]+\.)*(?:Words|Why|why|Message|message|Problem|problem|Next|What|Sentence|sentence|caution|Caution|NotSaved)(?:\(\))?[!?]?(?:\.(?:StartsWith|EndsWith|Contains|Split|IndexOf|LastIndexOf|Remove|Replace|Substring)\(|\[[^\]]*\.\.)")]
    private static partial Regex Reading();
}
