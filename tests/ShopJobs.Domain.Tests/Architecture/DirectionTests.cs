using System.Reflection;
using NetArchTest.Rules;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Architecture;

/// <summary>Which part of the domain may know which: fasteners and tools, then procedures, then parts and the logbook, then summaries.</summary>
public class DirectionTests
{
    private const string Domain = "ShopJobs.Domain.";
    private static readonly Assembly Product = typeof(CarState).Assembly;

    [Theory]
    [InlineData("Cars", "Fasteners", "Tools", "Procedures", "Parts", "Logbook", "Summaries")]
    [InlineData("Fasteners", "Procedures", "Parts", "Logbook", "Summaries")]
    [InlineData("Tools", "Procedures", "Parts", "Logbook", "Summaries")]
    [InlineData("Procedures", "Parts", "Logbook", "Summaries")]
    [InlineData("Parts", "Logbook", "Summaries")]
    [InlineData("Logbook", "Parts", "Summaries")]
    public void A_part_knows_nothing_of_those_that_build_on_it(string part, params string[] unknown)
    {
        Assert.NotEmpty(TypesOf(part).GetTypes());
        Assert.Empty(KnowingAny(TypesOf(part), [.. unknown.Select(name => Domain + name)]));
    }

    [Theory]
    [InlineData("Summaries", "Logbook")]
    [InlineData("Logbook", "Procedures")]
    [InlineData("Procedures", "Fasteners")]
    [InlineData("Logbook", "Tools")]
    [InlineData("Parts", "Procedures")]
    public void The_check_sees_a_dependency_that_is_there(string part, string known) =>
        Assert.NotEmpty(KnowingAny(TypesOf(part), Domain + known));

    [Fact]
    public void The_domain_knows_neither_database_nor_screen() =>
        Assert.Empty(KnowingAny(Types.InAssembly(Product), "Microsoft.EntityFrameworkCore", "Microsoft.Data", "Microsoft.AspNetCore", "MudBlazor", "ShopJobs.Web"));

    [Fact]
    public void The_domain_is_built_against_neither_database_nor_screen() => Assert.DoesNotContain(
        Product.GetReferencedAssemblies(),
        name => name.Name is { } text && (text.StartsWith("Microsoft.", StringComparison.Ordinal) || text.StartsWith("MudBlazor", StringComparison.Ordinal)));

    [Fact]
    public void No_part_of_the_domain_is_left_out_here()
    {
        var parts = Product.GetTypes().Select(type => type.Namespace).OfType<string>()
            .Where(name => name.StartsWith(Domain, StringComparison.Ordinal))
            .Select(name => name[Domain.Length..].Split('.')[0]).Distinct().Order();
        Assert.Equal(["Cars", "Fasteners", "Logbook", "Parts", "Procedures", "Summaries", "Tools"], parts);
    }

    private static PredicateList TypesOf(string part) => Types.InAssembly(Product).That().ResideInNamespace(Domain + part);

    private static IReadOnlyList<string> KnowingAny(PredicateList types, params string[] names) =>
        Named(types.ShouldNot().HaveDependencyOnAny(names).GetResult());

    private static IReadOnlyList<string> KnowingAny(Types types, params string[] names) =>
        Named(types.ShouldNot().HaveDependencyOnAny(names).GetResult());

    private static IReadOnlyList<string> Named(TestResult result) => result.FailingTypeNames is { } names ? [.. names] : [];
}
