using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.TorqueTools;

namespace ShopJobs.Web.Tests.TorqueTools;

public sealed class ToolFormValidatorTests
{
    [Fact]
    public void A_whole_form_is_accepted() => Assert.Empty(Wrong(ToolBench.Form()));

    [Theory]
    [InlineData(ToolKind.Click)]
    [InlineData(ToolKind.Indicating)]
    [InlineData(ToolKind.Angle)]
    public void Every_kind_of_tool_is_accepted(ToolKind kind)
    {
        var form = ToolBench.Form();
        form.Kind = kind;

        Assert.Empty(Wrong(form));
    }

    [Fact]
    public void A_kind_that_there_is_not_is_refused()
    {
        var form = ToolBench.Form();
        form.Kind = (ToolKind)9;

        Assert.Equal("Pick click, indicating, or torque and angle.", Assert.Single(Wrong(form)));
    }

    [Fact]
    public void Comma_and_point_are_both_decimal_marks()
    {
        var form = ToolBench.Form();
        (form.LowestMarked, form.Top, form.Graduation, form.ClassDeviation) = ("2,5", "12.5", "0,1", "3,5 %");

        Assert.Empty(Wrong(form));
    }

    [Theory]
    [InlineData("", "Nothing entered")]
    [InlineData("-5", "has a sign")]
    [InlineData("0", "above 0")]
    [InlineData("1e3", "exponent")]
    [InlineData("999999999", "more than any hand tool reaches")]
    [InlineData("12345678901", "more than 9 digits")]
    [InlineData("1.234,5", "comma and a point")]
    [InlineData("30 lbf·ft", "the tool is in N·m")]
    [InlineData("<script>alert(1)</script>", "does not start with a number")]
    public void A_bad_figure_is_told_in_plain_words(string typed, string says)
    {
        var form = ToolBench.Form();
        form.LowestMarked = typed;

        Assert.Contains(Wrong(form), wrong => wrong.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("200", "200", "1", "above the lowest")]
    [InlineData("40", "45", "10", "not wider than the whole range")]
    public void Figures_that_cannot_be_one_tool_are_refused(string lowest, string top, string graduation, string says)
    {
        var form = ToolBench.Form();
        (form.LowestMarked, form.Top, form.Graduation) = (lowest, top, graduation);

        Assert.Contains(says, Assert.Single(Wrong(form)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("four")]
    [InlineData("-4")]
    [InlineData("0")]
    [InlineData("40")]
    public void A_bad_limit_is_refused(string typed)
    {
        var form = ToolBench.Form();
        form.ClassDeviation = typed;

        Assert.Contains("percent", Assert.Single(Wrong(form)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("320")]
    [InlineData("320,5 mm")]
    [InlineData("3000")]
    public void A_length_may_be_left_out_or_is_in_millimetres(string typed)
    {
        var form = ToolBench.Form();
        form.Length = typed;

        Assert.Empty(Wrong(form));
    }

    [Theory]
    [InlineData("0", "above 0 and not above 3000 mm")]
    [InlineData("3001", "above 0 and not above 3000 mm")]
    [InlineData("-320", "Write the length in mm")]
    [InlineData("32 cm", "Write the length in mm")]
    [InlineData("long", "Write the length in mm")]
    public void A_bad_length_is_told_in_plain_words(string typed, string says)
    {
        var form = ToolBench.Form();
        form.Length = typed;

        Assert.Contains(says, Assert.Single(Wrong(form)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("5001")]
    [InlineData("-2500")]
    [InlineData("2500.5")]
    [InlineData("2500 N·m")]
    [InlineData("many")]
    public void A_bad_number_of_pulls_is_told_in_plain_words(string typed)
    {
        var form = ToolBench.Form();
        form.CycleLimit = typed;

        Assert.Contains("Write a whole number of pulls from 1 to 5000", Assert.Single(Wrong(form)), StringComparison.Ordinal);
    }

    [Fact]
    public void Name_and_serial_are_asked_for_and_bounded()
    {
        var form = ToolBench.Form(" \u0007 ", new string('x', 61));
        form.Unit = (TorqueUnit)99;

        var fields = new ToolFormValidator().Validate(form).Errors.Select(error => error.PropertyName).ToList();

        Assert.Contains(nameof(ToolForm.Name), fields);
        Assert.Contains(nameof(ToolForm.Serial), fields);
        Assert.Contains(nameof(ToolForm.Unit), fields);
    }

    private static IReadOnlyList<string> Wrong(ToolForm form) =>
        [.. new ToolFormValidator().Validate(form).Errors.Select(error => error.ErrorMessage)];
}
