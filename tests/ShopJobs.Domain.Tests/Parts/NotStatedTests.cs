using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Parts;

namespace ShopJobs.Domain.Tests.Parts;

/// <summary>What the maker does not state stays not stated: no zero, no usual value, and nothing that was worked out from it.</summary>
public class NotStatedTests
{
    private static readonly PartOption Nothing = new() { Id = default, Name = "Q0", Maker = "Quillon" };

    [Fact]
    public void Nothing_stated_gives_no_figure_at_all()
    {
        var comparison = StudKits.Compare(Nothing);

        Assert.All(comparison.Rows.Where(row => !row.Name.StartsWith("Nut on the wheel", StringComparison.Ordinal)), row =>
        {
            Assert.True(row.Cells[0] is OptionCell.NotStated or OptionCell.NotComputed, $"{row.Name}: {row.Cells[0]}");
            Assert.DoesNotContain(row.Cells[0].Text, char.IsAsciiDigit);
        });
        Assert.Null(comparison.Options[0].Tightest);
    }

    [Fact]
    public void Every_gap_is_named_in_one_caution() => Assert.Contains(
        "Not stated by the maker: thread, strength, length, face under it, torque, jam torque, condition of threads and faces, pieces in a kit, price.",
        Assert.Single(StudKits.Verdict(Nothing, StudKits.Front).Cautions), StringComparison.Ordinal);

    [Fact]
    public void Strength_not_stated_leaves_the_clamp_load_without_a_share()
    {
        var comparison = StudKits.Compare(StudKits.Q4 with { Strength = null });

        Assert.Equal("not stated by the maker", comparison.Text("Strength class"));
        Assert.Equal("not computed: the strength is not stated", comparison.Text("Proof load"));
        Assert.Equal("not computed: the strength is not stated", comparison.Text("Share of proof load, low / nominal / high"));
        Assert.Equal("25.6 / 33.4 / 46.6 kN", comparison.Text("Clamp load, low / nominal / high"));
        Assert.Equal("not computed: the strength is not stated", comparison.Text("Engaged thread of the stud strips at, front"));
    }

    [Fact]
    public void Condition_not_stated_is_reckoned_as_the_procedure_has_it_and_says_so()
    {
        var comparison = StudKits.Compare(StudKits.Q4 with { Condition = null });

        Assert.IsType<OptionCell.NotStated>(comparison.Cell("Threads and faces"));
        Assert.EndsWith("with pre-applied locker, as in this procedure", comparison.Text("Reckoned at"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_kit_nut_of_unknown_measures_leaves_the_length_unjudged()
    {
        var kit = StudKits.Q4 with { Nut = new KitNut { Seat = StudKits.Said(SeatForm.Cone(60)) } };

        Assert.IsType<OptionCell.NotStated>(StudKits.Compare(kit).Cell("Class of the kit's nut"));
        Assert.Equal("not computed: thread or end of the kit's nut is not stated", StudKits.Compare(kit).Text("Thread engaged in the nut, front"));
        Assert.Contains(StudKits.Verdict(kit, StudKits.Front).Cautions, caution => caution.Contains("thread of its nut, end of its nut, class of its nut", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_value_without_its_source_is_none(string source) => Assert.Throws<ArgumentException>(() => new Stated<int>(10, source));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1_000_001)]
    public void A_price_is_above_zero_and_no_fortune(int amount) => Assert.Throws<ArgumentOutOfRangeException>(() => new Price(amount, "EUR"));

    [Theory]
    [InlineData("eur")]
    [InlineData("EURO")]
    [InlineData("€")]
    public void A_currency_is_three_capital_letters(string currency) => Assert.Throws<ArgumentException>(() => new Price(1, currency));
}
