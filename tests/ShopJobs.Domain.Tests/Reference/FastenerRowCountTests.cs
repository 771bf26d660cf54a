using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Reference;

public class FastenerRowCountTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_kind_has_rows()
    {
        foreach (var kind in FastenerRows.Kinds)
        {
            output.WriteLine($"{FastenerRows.Of(kind).Count,4}  {kind}");
        }

        var left = FastenerRows.NotCovered.ToList();
        output.WriteLine($"{left.Count,4}  not covered yet: {string.Join(' ', left)}");
        Assert.All(FastenerRows.Kinds, kind => Assert.NotEmpty(FastenerRows.Of(kind)));
    }
}
