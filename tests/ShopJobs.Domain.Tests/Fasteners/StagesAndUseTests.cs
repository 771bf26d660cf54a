using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public class StagesAndUseTests
{
    /// <summary>US Army TM 5-3805-248-23-1: 70 % of final, then final; ASME PCC-1 (from memory): 30, 70, 100 %.</summary>
    [Fact]
    public void Stages_end_at_the_final_torque_and_lie_on_marks()
    {
        var final = EnteredTorque.Parse("165");

        Assert.Equal(["115 N·m", "165 N·m"], StagedTightening.TwoStages.StagesOf(final, 5).Select(s => s.ToString()));
        Assert.Equal(["49 N·m", "115 N·m", "165 N·m"], StagedTightening.ThreeStages.StagesOf(final, 1).Select(s => s.ToString()));
    }

    [Fact]
    public void A_single_use_bolt_is_used_once()
    {
        var bolt = new FastenerUse(0, 1);

        Assert.Null(bolt.WhyNot);
        Assert.Contains("single-use", bolt.AfterTightening().WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void Jam_nuts_kept_as_a_tool_are_scrapped_after_twenty()
    {
        Assert.Null(new FastenerUse(19, 20).WhyNot);
        Assert.Equal(1, new FastenerUse(19, 20).Left);
        Assert.Contains("20 times of 20", new FastenerUse(20, 20).WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void Yield_and_damage_end_any_fasteners_life()
    {
        Assert.Contains("yield", new FastenerUse(1, null, Yielded: true).WhyNot, StringComparison.Ordinal);
        Assert.Contains("damaged", new FastenerUse(1, null, ThreadDamaged: true).WhyNot, StringComparison.Ordinal);
        Assert.Null(new FastenerUse(99, null).WhyNot);
        Assert.Throws<ArgumentOutOfRangeException>(() => new FastenerUse(-1, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FastenerUse(0, 0));
    }
}
