using ShopJobs.Domain.Parts;

namespace ShopJobs.Domain.Tests.Parts;

public class DifferencesFirstTests
{
    private static readonly PartOption Longer = StudKits.Q4 with
    {
        Name = "Q4 long",
        Length = StudKits.Said(StudKits.Mm(48)),
        Price = StudKits.Said(new Price(79m, "EUR")),
    };

    [Fact]
    public void Lines_that_differ_stand_first_and_keep_their_order()
    {
        var rows = StudKits.Compare(StudKits.Q4, Longer).Rows;

        Assert.Equal(
            ["Length from its face", "End of the stud in the nut, front", "Price of a kit", "Price for this job", "Price per kN of margin, each"],
            rows.TakeWhile(row => row.Differs).Select(row => row.Name));
        Assert.DoesNotContain(rows.SkipWhile(row => row.Differs), row => row.Differs);
        Assert.Equal("Thread", rows.First(row => !row.Differs).Name);
    }

    [Fact]
    public void Two_that_state_nothing_of_it_are_alike_and_one_that_does_is_not()
    {
        var silent = StudKits.Q4 with { Price = null };

        Assert.False(Row(StudKits.Compare(silent, silent with { Name = "other" })).Differs);
        Assert.True(Row(StudKits.Compare(silent, StudKits.Q4)).Differs);

        static ComparisonRow Row(PartComparison comparison) => comparison.Rows.Single(row => row.Name == "Price of a kit");
    }

    [Fact]
    public void Another_source_for_the_same_value_is_no_difference() => Assert.DoesNotContain(
        StudKits.Compare(StudKits.Q4, StudKits.Q4 with { Thread = new(StudKits.Q4.Thread!.Value, "gauged here") }).Rows, row => row.Differs);

    [Fact]
    public void One_option_differs_from_nothing() => Assert.DoesNotContain(StudKits.Compare(StudKits.Q4).Rows, row => row.Differs);

    [Fact]
    public void Columns_keep_the_order_they_were_given_in()
    {
        var comparison = StudKits.Compare(Longer, StudKits.Q4);

        Assert.Equal(["Q4 long", "Q4"], comparison.Options.Select(option => option.Option.Name));
        Assert.Equal(["48 mm", "42 mm"], comparison.Rows.Single(row => row.Name == "Length from its face").Cells.Select(cell => cell.Text));
        Assert.Equal([false, true], comparison.Options.Select(option => option.Verdict.CanBeChosen));
    }
}
