using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Parts;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Procedures;

namespace ShopJobs.Domain.Tests.Parts;

/// <summary>What a group on a job asks of an option, from the shop's own procedures.</summary>
public class JointToFillTests
{
    [Theory]
    [InlineData(20, "front-left", "front-right", "rear-left", "rear-right")]
    [InlineData(5, "rear-left")]
    public void Five_studs_are_needed_for_each_wheel_of_the_job(int count, params string[] places)
    {
        var joint = Of("P3-wheel-studs.yaml", "stud", places);

        Assert.Equal(count, joint.Count);
        Assert.True(joint.OnWheel);
        Assert.Equal("73 N·m", joint.Asked.Target.ToString());
    }

    [Fact]
    public void A_bolt_turned_on_by_an_angle_has_no_clamp_load_by_its_torque()
    {
        var joint = Of("P6-head.yaml", "head", "engine");
        var bolt = StudKits.Q4 with
        {
            Thread = StudKits.Said(ThreadSize.Parse("M11x1.5")),
            Torque = StudKits.Said(StudKits.Range("38", "42 N·m")),
            Jam = null,
            Condition = null,
        };

        var comparison = PartComparison.Of(joint, [bolt]);

        Assert.Equal((10, false), (joint.Count, joint.OnWheel));
        foreach (var row in new[] { "Clamp load, low / nominal / high", "Share of proof load, low / nominal / high", "Share of yield while tightening, low / nominal / high" })
        {
            Assert.Equal("not computed: an angle is turned on from the torque, so the torque does not tell the clamp load", comparison.Text(row));
        }

        Assert.Contains(
            comparison.Options[0].Verdict.Cautions,
            caution => caution.StartsWith("Angle: ", StringComparison.Ordinal) && caution.Contains("the angle of this part is not compared. Read the maker's instruction", StringComparison.Ordinal));
        Assert.DoesNotContain(comparison.Options[0].Verdict.Cautions, caution => caution.Contains('%', StringComparison.Ordinal));
        Assert.DoesNotContain(comparison.Rows, row => row.Name.Contains("nut", StringComparison.OrdinalIgnoreCase));
    }

    private static JointToFill Of(string file, string group, params string[] places)
    {
        var procedure = Seed.Procedure(file).Value!;
        return JointToFill.Of(new PlacedProcedure(procedure, Seed.Register, places), procedure.Group(group), []);
    }
}
