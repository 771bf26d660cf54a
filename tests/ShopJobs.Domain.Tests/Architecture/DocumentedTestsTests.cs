using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Tests.Architecture;

/// <summary>A page that names a test names one that is there.</summary>
public partial class DocumentedTestsTests
{
    [Theory]
    [InlineData("edge-cases.md")]
    [InlineData("gate.md")]
    public void Every_test_that_a_page_names_is_there(string page)
    {
        var root = Root();
        var tests = Directory.EnumerateFiles(Path.Combine(root, "tests"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => Method().Matches(File.ReadAllText(file))).Select(match => match.Groups[1].Value).ToHashSet();
        var named = Named().Matches(File.ReadAllText(Path.Combine(root, "docs", page))).Select(match => match.Groups[1].Value).ToList();

        Assert.NotEmpty(named);
        Assert.All(named, name => Assert.Contains(name, tests));
    }

    [GeneratedRegex(@"public (?:async )?(?:void|Task) (\w+)\(")]
    private static partial Regex Method();

    [GeneratedRegex(@"`([A-Z]\w*_\w+)`")]
    private static partial Regex Named();

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "ShopJobs.sln")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new InvalidOperationException($"No ShopJobs.sln above {AppContext.BaseDirectory}.");
    }
}
