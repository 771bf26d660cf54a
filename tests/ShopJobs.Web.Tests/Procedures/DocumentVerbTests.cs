using ShopJobs.Web.Admin;
using ShopJobs.Web.Components.Procedures;

namespace ShopJobs.Web.Tests.Procedures;

public sealed class DocumentVerbTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("documents-");
    private readonly StringWriter output = new();

    private string Shop => Path.Combine(folder.FullName, "shop");

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        output.Dispose();
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task Lint_passes_the_seed_and_prints_its_cautions_with_file_and_line()
    {
        var exit = await LintAsync([Write(Documents.Register), Write(Documents.WheelStuds), Write(Documents.WheelFitUp)]);

        Assert.True(exit == 0, output.ToString());
        Assert.Matches(@"P3-wheel-studs\.yaml:\d+:\d+: caution: groups\[2\]: Group “stud”: Jam torque: with 90 N·m the nuts may creep .* — ", output.ToString());
        Assert.EndsWith($"3 files: 0 errors, 4 cautions.{Environment.NewLine}", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lint_prints_every_error_of_every_file_and_exits_1()
    {
        var studs = Write(Documents.WheelStuds.With("torque: 90 N·m", "torque: 90"));
        var wheels = Write(Documents.WheelFitUp.With("key: wheel.nut", "key: wheel.nutt"));

        Assert.Equal(1, await LintAsync([studs, wheels], Write(Documents.Register)));

        Assert.Contains($"{studs}:", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("“90” has no unit — write it as the instruction does", output.ToString(), StringComparison.Ordinal);
        Assert.Matches(@"P5-wheel-fit-up\.yaml:\d+:10: error: groups\[1\]\.key: The joint register has no “wheel\.nutt” — did you mean “wheel\.nut”", output.ToString());
    }

    [Fact]
    public async Task Lint_without_a_register_says_what_to_name()
    {
        Assert.Equal(1, await LintAsync([Write(Documents.WheelFitUp)]));
        Assert.Contains("Name one with --register.", output.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Shop));
    }

    [Fact]
    public async Task Lint_names_a_file_that_is_not_there()
    {
        Assert.Equal(1, await LintAsync([Path.Combine(folder.FullName, "missing.yaml")]));
        Assert.Contains("missing.yaml:1:1: error: The file can't be read", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_takes_the_seed_and_lint_then_uses_the_shops_register()
    {
        Assert.Equal(0, await ImportAsync([Write(Documents.Register), Write(Documents.WheelFitUp)]));
        Assert.Contains("P5 “Wheel fit-up, cone nuts on studs”, revision 2 is in the shop and current.", output.ToString(), StringComparison.Ordinal);

        Assert.Equal(0, await LintAsync([Write(Documents.WheelFitUp)]));
    }

    [Fact]
    public async Task Import_of_one_bad_file_takes_nothing_and_exits_1()
    {
        var bad = Write(Documents.WheelStuds.With("torque: 90 N·m", "torque: 90"));

        Assert.Equal(1, await ImportAsync([Write(Documents.Register), Write(Documents.WheelFitUp), bad]));
        Assert.EndsWith($"Nothing was imported.{Environment.NewLine}", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, await LintAsync([Write(Documents.WheelFitUp)]));
    }

    [Theory]
    [InlineData("kinds: ")]
    [InlineData("steps: ")]
    public async Task A_document_that_lies_too_deep_is_refused_by_both(string start)
    {
        var deep = Write(new DocumentFile("deep.yaml", System.Text.Encoding.UTF8.GetBytes(start + new string('[', 200_000))));

        Assert.Equal(1, await LintAsync([Write(Documents.Register), deep]));
        Assert.Contains("deep.yaml:1:", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("Lists and keys lie more than 16 deep in each other", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, await ImportAsync([Write(Documents.Register), deep]));
        Assert.EndsWith($"Nothing was imported.{Environment.NewLine}", output.ToString(), StringComparison.Ordinal);
    }

    private string Write(DocumentFile file)
    {
        var path = Path.Combine(folder.FullName, file.Name);
        File.WriteAllBytes(path, file.Bytes);
        return path;
    }

    private Task<int> LintAsync(string[] files, string? register = null) =>
        LintVerb.RunAsync(files, register, Shop, output, CancellationToken.None);

    private Task<int> ImportAsync(string[] files) => ImportVerb.RunAsync(files, Shop, output, CancellationToken.None);
}
