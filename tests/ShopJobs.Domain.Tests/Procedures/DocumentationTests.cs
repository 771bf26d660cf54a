using System.Text;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

public class DocumentationTests
{
    [Fact]
    public void The_example_in_the_documentation_loads()
    {
        var page = Encoding.UTF8.GetString(Seed.Bytes("../docs/procedures.md")).Split("```yaml\n");
        var example = Assert.Single(page.Skip(1)).Split("```")[0];
        var loaded = ProcedureDocument.Load(Encoding.UTF8.GetBytes(example), "example.yaml", Seed.Register);
        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        Assert.NotNull(loaded.Value);
    }
}
