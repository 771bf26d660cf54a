using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>ISO 898-2 table of pairing, from memory.</summary>
public class NutPairingTests
{
    [Theory]
    [InlineData("8.8", "8")]
    [InlineData("8.8", "10")]
    [InlineData("10.9", "10")]
    [InlineData("12.9", "12")]
    [InlineData("4.6", "5")]
    [InlineData("9.8", "9")]
    public void A_nut_of_the_bolts_class_or_higher_lets_the_bolt_break_first(string bolt, string nut) =>
        Assert.IsType<NutPairing.FullStrength>(NutPairing.Judge(StrengthClass.Parse(bolt), NutClass.Parse(nut)));

    [Theory]
    [InlineData("10.9", "8", "carries bolts up to 8.8")]
    [InlineData("12.9", "10", "carries bolts up to 10.9")]
    [InlineData("8.8", "05", "is thin")]
    public void A_weaker_or_thin_nut_may_strip(string bolt, string nut, string words) => Assert.Contains(
        words, Assert.IsType<NutPairing.MayStrip>(NutPairing.Judge(StrengthClass.Parse(bolt), NutClass.Parse(nut))).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("SAE 8")]
    [InlineData("A2-70")]
    public void Where_no_pairing_is_published_none_is_judged(string bolt) =>
        Assert.IsType<NutPairing.NotJudged>(NutPairing.Judge(StrengthClass.Parse(bolt), NutClass.Parse("10")));

    [Fact]
    public void Nut_classes_are_read_and_others_refused()
    {
        Assert.Equal("10", NutClass.Parse(" class 10 ").ToString());
        Assert.True(NutClass.Parse("04").IsThin);
        Assert.Throws<FormatException>(() => NutClass.Parse("8.8"));
        Assert.Throws<FormatException>(() => NutClass.Parse(null));
    }

    [Fact]
    public void A_nut_of_the_bolts_class_carries_at_least_the_bolts_proof_load() => Assert.All(
        new[] { ("8.8", "8"), ("9.8", "9"), ("10.9", "10"), ("12.9", "12"), ("5.8", "5"), ("6.8", "6") },
        pair => Assert.True(
            NutClass.Parse(pair.Item2).ProofLoad(ThreadSize.Parse("M12x1.5")) >= StrengthClass.Parse(pair.Item1).ProofLoad(ThreadSize.Parse("M12x1.5"))));
}
