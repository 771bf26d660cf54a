using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Running;

namespace ShopJobs.Web.Tests.Architecture;

/// <summary>The end of a class's name says what it is for, and one end is used for one thing.</summary>
public sealed class RolesTests
{
    private static readonly List<Type> Types =
        [.. typeof(ShopHost).Assembly.GetTypes().Where(type => !type.IsNested && type.Namespace?.StartsWith("ShopJobs.Web", StringComparison.Ordinal) == true)];

    [Fact]
    public void Books_are_the_logbooks_and_lie_in_the_domain() => Assert.Empty(Ending("Book"));

    [Fact]
    public void Sheets_are_parts_of_the_customers_page() =>
        Assert.DoesNotContain(Ending("Sheet"), type => type.Namespace != "ShopJobs.Web.Components.Summaries" && type.Name is not ("CarSheet" or "FloorCarSheet" or "JobSheet"));

    [Theory]
    [InlineData("Scene")]
    [InlineData("Dialogs")]
    [InlineData("Desk")]
    [InlineData("Shelf")]
    public void An_end_is_in_use(string end) => Assert.NotEmpty(Ending(end));

    [Fact]
    public void A_shelf_writes_through_a_desk_alone() =>
        Assert.DoesNotContain(Ending("Shelf"), shelf => shelf.GetConstructors().SelectMany(made => made.GetParameters()).Any(asked => asked.ParameterType == typeof(LogbookWriter)));

    private static IEnumerable<Type> Ending(string end) => Types.Where(type => type.Name.EndsWith(end, StringComparison.Ordinal));
}
