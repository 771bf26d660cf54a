using System.Text.RegularExpressions;
using ShopJobs.Tests.Shared;

namespace ShopJobs.Web.Tests.Look;

/// <summary>
/// A field whose value the server writes back after each letter loses letters on a slow line: the answer to the first letter
/// overwrites the second. With @bind the browser keeps what was typed.
/// </summary>
public sealed partial class TypedFieldTests
{
    [Fact]
    public void No_field_has_its_value_written_back_by_hand_while_somebody_types()
    {
        var pages = new DirectoryInfo(Path.Combine(WorkSeed.Folder.Parent!.FullName, "src", "ShopJobs.Web", "Components"))
            .GetFiles("*.razor", SearchOption.AllDirectories);
        var fields = pages.SelectMany(page => Field().Matches(File.ReadAllText(page.FullName)).Select(field => (page.Name, Text: field.Value))).ToList();

        Assert.Contains(fields, field => field.Text.Contains("@bind:event=\"oninput\"", StringComparison.Ordinal));
        Assert.DoesNotContain(fields, field => field.Text.Contains("@oninput", StringComparison.Ordinal) && Written().IsMatch(field.Text));
    }

    [GeneratedRegex(@"\svalue=|@bind")]
    private static partial Regex Written();

    [GeneratedRegex("<(?:input|textarea)(?:[^>]|=>)*>")]
    private static partial Regex Field();
}
