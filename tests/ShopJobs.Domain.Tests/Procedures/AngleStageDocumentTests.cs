using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>How a stage that is turned by an angle is written, and what is said where it is written wrongly.</summary>
public class AngleStageDocumentTests
{
    private const string Visits = "visits: [1, 3, 5, 2, 4]";
    private const string Low = $"{{value: 50 N·m, conditions: {{stand: wheel-up}}, {Visits}}}";
    private const string Final = $"{{value: 110 N·m, permitted: 105..115 N·m, witness: true, {Visits}}}";
    private const string Snug = $"{{value: 50 N·m, permitted: 48..52 N·m, {Visits}}}";
    private const string Turn = $"{{turn: 90 deg, permitted: 85..95 deg, witness: true, {Visits}}}";
    private const string ReTorque = "re-torque: {after: 50 km, before: 100 km, within: 30 days}";

    [Fact]
    public void A_torque_and_then_an_angle_load_as_two_stages()
    {
        var loaded = Written.Load(WithStages(Snug, Turn));

        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        var nuts = loaded.Value!.Group("nuts");
        Assert.Equal([null, new Turn(90, 85, 95)], nuts.Stages.Select(stage => stage.Turn));
        Assert.Equal(["50 N·m", "50 N·m"], nuts.Stages.Select(stage => stage.Value.ToString()));
        Assert.Equal("50 N·m, then +90°", nuts.StageWords());
        Assert.Equal(["48 to 52 N·m", "85 to 95°"], nuts.Stages.Select(stage => stage.PermittedAmount()));
        Assert.True(nuts.IsTurned);
    }

    [Fact]
    public void The_document_cautions_that_the_angle_carries_the_bolt_and_does_not_call_the_snug_torque_low()
    {
        var said = Written.Load(WithStages(Snug, Turn)).Cautions.Where(caution => caution.What.Contains("“nuts”", StringComparison.Ordinal)).ToList();

        Assert.Contains(said, caution => caution.What.Contains("50 N·m only snugs the joint", StringComparison.Ordinal));
        Assert.DoesNotContain(said, caution => caution.What.Contains("below 40 %", StringComparison.Ordinal));
    }

    // The two stages, and what is said on the line of which one.
    public static TheoryData<string, string, int, string, string> Faults => new()
    {
        { Turn.Replace(", witness: true", "", StringComparison.Ordinal), Turn, 1, "The first stage turns by an angle, and nothing is snug yet", "torque stage before it" },
        { Turn.Replace(", witness: true", "", StringComparison.Ordinal), Final, 2, "A torque follows on an angle", "the torque stages first" },
        { Snug, Turn.Replace("turn: 90 deg", "turn: -90 deg", StringComparison.Ordinal), 2, "“-90 deg” is not a number of deg from 1 to 360", "with its unit" },
        { Snug, Turn.Replace("turn: 90 deg", "turn: 9000 deg", StringComparison.Ordinal), 2, "“9000 deg” is not a number of deg from 1 to 360", "with its unit" },
        { Snug, Turn.Replace("turn: 90 deg", "turn: 90", StringComparison.Ordinal), 2, "“90” is not a number of deg", "with its unit" },
        { Snug, Turn.Replace("turn: 90 deg", "turn: 90 N·m", StringComparison.Ordinal), 2, "“90 N·m” is not a number of deg", "with its unit" },
        { Snug, Turn.Replace("turn: 90 deg", "turn: ninety deg", StringComparison.Ordinal), 2, "“ninety deg” is not a number of deg", "with its unit" },
        { Snug, Turn.Replace("{turn", "{value: 90 N·m, turn", StringComparison.Ordinal), 2, "Stage 2 has both “value” and “turn”", "two stages" },
        { Snug, Turn.Replace("{turn", "{evidence: setting, turn", StringComparison.Ordinal), 2, "An angle is always read on a tool that measures it", "delete the line" },
        { Snug, Turn.Replace("permitted: 85..95 deg, ", "", StringComparison.Ordinal), 2, "The angle stage has no “permitted”", "85..95 deg" },
        { Snug, Turn.Replace("85..95 deg", "85..95 N·m", StringComparison.Ordinal), 2, "“85..95 N·m” is not a range of deg", "85..95 deg" },
        { Snug, Turn.Replace("85..95 deg", "85..95", StringComparison.Ordinal), 2, "“85..95” is not a range of deg", "85..95 deg" },
        { Snug, Turn.Replace("85..95 deg", "95..85 deg", StringComparison.Ordinal), 2, "“95..85 deg” is not a range of deg", "85..95 deg" },
        { Snug, Turn.Replace("85..95 deg", "90 deg", StringComparison.Ordinal), 2, "“90 deg” is not a range of deg", "85..95 deg" },
        { Snug, Turn.Replace("85..95 deg", "85..400 deg", StringComparison.Ordinal), 2, "“85..400 deg” is not a range of deg from 1 to 360", "85..95 deg" },
        { Snug, Turn.Replace("85..95 deg", "91..95 deg", StringComparison.Ordinal), 2, "90° is below the permitted 91 to 95°", "choose an angle inside" },
        { Snug, Turn.Replace("85..95 deg", "85..89 deg", StringComparison.Ordinal), 2, "90° is above the permitted 85 to 89°", "choose an angle inside" },
        { Low, Turn, 1, "The final stage has no “permitted”", "the range of the instruction" },
        { Snug, Turn.Replace(", witness: true", "", StringComparison.Ordinal), 0, "Group “nuts” is class A and nobody looks at its final stage", "witness: true" },
        { Snug, Turn.Replace("[1, 3, 5, 2, 4]", "[1, 3, 5, 2]", StringComparison.Ordinal), 2, "The visits leave out position 4", "every position" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_named_on_its_line_and_nothing_is_taken(string first, string second, int stage, string what, string next)
    {
        var loaded = Written.Load(WithStages(first, second));

        Assert.Null(loaded.Value);
        var found = loaded.Errors.FirstOrDefault(problem => problem.What.Contains(what, StringComparison.Ordinal));
        Assert.True(found is not null, $"Not said: {what}. Said:\n{string.Join("\n", loaded.Problems)}");
        Assert.Contains(next, found.Next, StringComparison.Ordinal);
        Assert.Equal(stage == 0 ? Written.LineOf("id: nuts") : Written.LineOf(Low) + stage - 1, found.Line);
    }

    /// <summary>Factor 1.2 to 1.4 (VDI 2230 table A8, from memory): u = (a - 1)/(a + 1), so 9.1 to 16.7 %.</summary>
    [Fact]
    public void The_caution_has_the_scatter_of_the_tightening_factor_that_the_bench_reckons_with()
    {
        var procedure = Written.Load(WithStages(Snug, Turn)).Value!;
        var said = Assert.Single(ProcedureCautions.For(procedure, procedure.Group("nuts")), caution => caution.StartsWith("Turned", StringComparison.Ordinal));

        Assert.Contains("may carry the bolt to about its yield", said, StringComparison.Ordinal);
        Assert.Contains("about ±9 to 17 % (tightening factor 1.2 to 1.4, VDI 2230 table A8, from memory)", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("allowed", true)]
    [InlineData("single-use", false)]
    public void Hardware_that_is_turned_and_used_again_gives_a_caution(string reuse, bool cautioned)
    {
        var loaded = Written.Load(WithStages(Snug, Turn).Replace("{name: nut, reuse: allowed}", $"{{name: nut, reuse: {reuse}}}", StringComparison.Ordinal));

        Assert.Empty(loaded.Errors);
        Assert.Equal(cautioned, loaded.Cautions.Any(caution => caution.What.Contains("“nuts”: Bolts for angle tightening are commonly for one use", StringComparison.Ordinal)));
    }

    [Fact]
    public void Jammed_nuts_do_not_drive_a_stud_that_is_turned()
    {
        const string jam = "jam: {group: jam, torque: 90 N·m, tool-deviation: 4 %}";
        var loaded = Written.Load(WithStages(Snug, Turn).Replace("re-torque: forbidden", $"re-torque: forbidden\n    {jam}", StringComparison.Ordinal));

        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors, problem => problem.What.StartsWith("Two jammed nuts drive the stud", StringComparison.Ordinal));
        Assert.Equal(Written.LineOf(ReTorque) + 1, found.Line);
    }

    [Theory]
    [InlineData(ReTorque)]
    [InlineData("re-torque: none")]
    public void A_joint_that_is_turned_is_never_pulled_to_a_torque_again(string written)
    {
        var loaded = Written.Load(WithStages(Snug, Turn).Replace("re-torque: forbidden", written, StringComparison.Ordinal));

        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors);
        Assert.Equal("A joint that is turned by an angle is never pulled to a torque again", found.What);
        Assert.Equal(Written.LineOf(ReTorque), found.Line);
    }

    [Fact]
    public void Jam_nuts_that_are_turned_are_refused()
    {
        var loaded = Written.With(
            "{value: 90 N·m, permitted: 90 N·m, evidence: setting, visits: [1, 2, 3, 4, 5]}",
            "{value: 90 N·m, permitted: 90 N·m, evidence: setting, visits: [1, 2, 3, 4, 5]}\n      - {turn: 30 deg, permitted: 25..35 deg, visits: [1, 2, 3, 4, 5]}");

        Assert.Contains(loaded.Errors, problem => problem.What == "Here the nuts are jammed at 90 N·m, group “jam” has 90 N·m, +30°");
    }

    private static string WithStages(string first, string second) => Written.Sound
        .Replace(ReTorque, "re-torque: forbidden", StringComparison.Ordinal)
        .Replace(Low, first, StringComparison.Ordinal)
        .Replace(Final, second, StringComparison.Ordinal);
}
