using System.Text;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>How far a document is read that nobody wrote in earnest.</summary>
public sealed class DocumentBoundsTests
{
    public static TheoryData<string> Deep => new()
    {
        new string('[', 200_000),
        new string('{', 200_000),
        "kinds: " + new string('[', 200_000),
        "steps:\n" + string.Concat(Enumerable.Repeat("- ", 200_000)),
        string.Concat(Enumerable.Range(0, 900).Select(depth => new string(' ', depth) + "a:\n")),
    };

    [Theory]
    [MemberData(nameof(Deep))]
    public void Reading_stops_where_lists_lie_too_deep_in_each_other(string text)
    {
        var problems = new ProblemsFound();

        var root = DocumentTree.Read(Encoding.UTF8.GetBytes(text), problems, CancellationToken.None, out var events);

        Assert.Null(root);
        Assert.InRange(events, 1, 60);
        Assert.Equal("Lists and keys lie more than 16 deep in each other", Assert.Single(problems.InOrder).What);
    }

    [Fact]
    public void Reading_stops_after_more_keys_and_values_than_any_document_has()
    {
        var problems = new ProblemsFound();

        var root = DocumentTree.Read(Encoding.UTF8.GetBytes("cautions:\n" + string.Concat(Enumerable.Repeat("- x\n", 240_000))), problems, CancellationToken.None, out var events);

        Assert.Null(root);
        Assert.Equal(DocumentTree.MostEvents + 1, events);
        Assert.Equal("The document has more than 200000 keys and values", Assert.Single(problems.InOrder).What);
    }

    [Fact]
    public void Every_document_of_the_seed_is_far_from_the_bounds()
    {
        foreach (var file in (string[])["joint-register.yaml", .. Seed.Files.Select(name => $"procedures/{name}")])
        {
            Assert.NotNull(DocumentTree.Read(Seed.Bytes(file), new ProblemsFound(), CancellationToken.None, out var events));
            Assert.InRange(events, 100, DocumentTree.MostEvents / 10);
        }
    }

    [Fact]
    public void Reading_ends_when_nobody_waits_for_it() => Assert.Throws<OperationCanceledException>(
        () => JointRegisterDocument.Load(Encoding.UTF8.GetBytes("kinds: []"), "register.yaml", new CancellationToken(canceled: true)));
}
