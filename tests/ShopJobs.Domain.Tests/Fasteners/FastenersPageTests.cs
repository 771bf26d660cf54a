using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Procedures;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>docs/fasteners.md names code and checks: what it names exists, and what computes is named.</summary>
public partial class FastenersPageTests
{
    private static readonly string Page = Encoding.UTF8.GetString(Seed.Bytes("../docs/fasteners.md"));

    private static readonly Dictionary<string, Type> Types = typeof(ThreadSize).Assembly.GetExportedTypes()
        .Concat(typeof(FastenersPageTests).Assembly.GetTypes())
        .Where(type => !type.IsNested)
        .DistinctBy(type => type.Name)
        .ToDictionary(type => type.Name);

    [Fact]
    public void Every_type_and_member_it_names_exists()
    {
        var names = Code().Matches(Page).Select(match => match.Groups["name"].Value.Split('.')).ToList();
        Assert.True(names.Count > 60, $"{names.Count} names");
        Assert.All(names, name =>
        {
            Assert.True(Types.TryGetValue(name[0], out var type), $"{name[0]} is no type");
            Assert.True(name.Length == 1 || type!.GetMember(name[1], BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance).Length > 0, string.Join('.', name));
        });
    }

    [Fact]
    public void Every_computation_has_its_line() => Assert.All(
        typeof(ThreadSize).Assembly.GetExportedTypes()
            .Where(type => type.Namespace is "ShopJobs.Domain.Fasteners" or "ShopJobs.Domain.Tools" && type is { IsAbstract: true, IsSealed: true })
            .Where(type => !type.Name.EndsWith("Words", StringComparison.Ordinal)),
        type => Assert.Contains($"`{type.Name}", Page, StringComparison.Ordinal));

    [GeneratedRegex("`(?<name>[A-Z][A-Za-z0-9]+(\\.[A-Z][A-Za-z0-9]+)?)`", RegexOptions.CultureInvariant)]
    private static partial Regex Code();
}
