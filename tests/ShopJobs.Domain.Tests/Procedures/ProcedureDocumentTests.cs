using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

public class ProcedureDocumentTests
{
    private const string StudStage = "{value: 60 N·m, permitted: 55..65 N·m, witness: true, visits: [1, 3, 5, 2, 4]}";
    private const string LowStage = "{value: 50 N·m, conditions: {stand: wheel-up}, visits: [1, 3, 5, 2, 4]}";
    private const string FinalStage = "{value: 110 N·m, permitted: 105..115 N·m, witness: true, visits: [1, 3, 5, 2, 4]}";
    private const string StudHardware = "hardware: {name: stud, reuse: single-use}";
    private const string Waits = "waits-for: [drive, {group: stud, stage: 1}, {cure: stud, hours: 24 h}]";
    private const string Gap = "{id: gap, text: Gap, unit: mm, min: 0, max: 0.5, source: {document: Sheet, revision: \"1\", page: \"2\", basis: stated}}";

    [Fact]
    public void A_sound_document_loads_whole()
    {
        var loaded = Written.Load(Written.Sound);
        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        Assert.Equal(["jam", "stud", "nuts"], loaded.Value!.Groups.Select(group => group.Id));
        Assert.Equal(["open", "drive", "low", "final"], loaded.Value.Steps.Select(step => step.Id));
        Assert.Equal([new WaitsFor.ForStep("open")], loaded.Value.Steps[1].WaitsFor);
        Assert.Equal(
            [new WaitsFor.ForStep("drive"), new WaitsFor.ForGroup("stud", 1), new WaitsFor.ForCure("stud", 24)], loaded.Value.Steps[2].WaitsFor);
        Assert.Equal("40.0 to 60.0 N·m", loaded.Value.Group("nuts").Stages[0].Permitted.ToString());
        Assert.Equal(loaded.Value.Group("nuts").Source, loaded.Value.Group("nuts").Final.Source);
    }

    [Theory]
    [InlineData("30 min", 30)]
    [InlineData("2 h", 120)]
    [InlineData("1.5 h", 90)]
    public void A_group_may_say_within_what_time_of_hand_tight_it_has_to_be_done(string written, int minutes)
    {
        var loaded = Written.With(StudHardware, $"within: {written}\n    {StudHardware}");
        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        Assert.Equal(TimeSpan.FromMinutes(minutes), loaded.Value!.Group("stud").Within);
        Assert.Null(loaded.Value.Group("nuts").Within);
    }

    // What is written instead of which part, and what is said about that line.
    public static TheoryData<string, string, string, string> OneFault => new()
    {
        { "title: Test fit", "titel: Test fit", "The key “titel” is not known here", "did you mean “title”" },
        { "demo-data: true", "demo-data: yes", "“yes” is not one of the words for “demo-data”", "known here: true, false" },
        { "code: T1", "code: T 1", "“T 1” is no code", "letters, digits" },
        { "title: Test fit", "title: [Test, fit]", "A list is here, a text is needed", "write one value" },
        { "title: Test fit", "title:", "Nothing is written here", "write the value" },
        { "key: wheel.nut", "key: wheel.nutt", "The joint register has no “wheel.nutt”", "did you mean “wheel.nut”" },
        { "id: stud\n", "id: jam\n", "The group “jam” comes twice", "an id of its own" },
        { "key: wheel.nut\n", "key: wheel.stud\n", "Two groups tighten “wheel.stud”", "put the stages together" },
        { "risk: C", "risk: D", "“D” is not one of the words for “risk”", "did you mean" },
        { "hardware: {name: nut, reuse: allowed}", "hardware: {name: nut, reuse: sometimes}", "“sometimes” is not one of the words for “reuse”", "allowed" },
        { "re-torque: {after: 50 km, before: 100 km, within: 30 days}", "re-torque: maybe", "“maybe” is no re-torque rule", "none, forbidden" },
        { "after: 50 km, before: 100 km", "after: 50, before: 100 km", "“50” is not a number of km", "with its unit" },
        { "after: 50 km, before: 100 km", "after: 100 km, before: 50 km", "is not above the one from which it is allowed", "below" },
        { "seat: {kind: cone, angle: 60 deg, mean-diameter: 16.25 mm}", "seat: {kind: conical}", "A seat of the kind “conical” is not known", "flat, cone, ball" },
        { "seat: {kind: cone, angle: 60 deg, mean-diameter: 16.25 mm}", "seat: {kind: ball, radius: 12 mm, mean-diameter: 24 mm}", "The ring of contact is not smaller than the ball", "measure both again" },
        { "angle: 60 deg", "angle: 20 deg", "“20 deg” is not a number of deg from 30 to 170", "with its unit" },
        { StudHardware, $"within: 30\n    {StudHardware}", "“30” is not a time from 1 min to 8760 h", "for example 30 min or 2 h" },
        { StudHardware, $"within: 30 s\n    {StudHardware}", "“30 s” is not a time from 1 min to 8760 h", "for example 30 min or 2 h" },
        { StudHardware, $"within: 0 min\n    {StudHardware}", "“0 min” is not a time from 1 min to 8760 h", "for example 30 min or 2 h" },
        { "temporary: true", "within: 30 min\n    temporary: true", "Group “jam” is temporary and has a time limit", "at the group that stays on the car" },
        { StudStage, "{value: 60, permitted: 55..65 N·m, witness: true, visits: [1, 3, 5, 2, 4]}", "“60” has no unit", "60 N·m" },
        { StudStage, "{value: 60 N·m, permitted: 65..55 N·m, witness: true, visits: [1, 3, 5, 2, 4]}", "The least permitted torque, 65 N·m, is above the greatest", "read both again" },
        { StudStage, "{value: 66 N·m, permitted: 55..65 N·m, witness: true, visits: [1, 3, 5, 2, 4]}", "66 N·m is above the permitted 55 to 65 N·m", "choose a value inside" },
        { StudStage, "{value: 60 N·m, witness: true, visits: [1, 3, 5, 2, 4]}", "The final stage has no “permitted”", "the range of the instruction" },
        { StudStage, "{value: 60 N·m, permitted: 55..65 N·m, witness: true, visits: [1, 3, 6, 2, 4]}", "“6” is not a position from 1 to 5", "by their number" },
        { StudStage, "{value: 60 N·m, permitted: 55..65 N·m, witness: true, visits: [1, 3, 5, 2]}", "The visits leave out position 4", "every position" },
        { LowStage, "{value: 50 N·m, conditions: {stand: flying}, visits: [1, 3, 5, 2, 4]}", "The car's “stand” is never “flying”", "wheel-up" },
        { LowStage, "{value: 50 N·m, conditions: {stnd: wheel-up}, visits: [1, 3, 5, 2, 4]}", "The key “stnd” is not known here", "did you mean “stand”" },
        { LowStage, "{value: 90 N·m, visits: [1, 3, 5, 2, 4]}", "Stage 1 would be accepted up to 108.0 N·m (120 %, as nothing else is written), and the final stage begins at 105 N·m", "ends below" },
        { LowStage, "{value: 90 N·m, permitted: 80..105 N·m, visits: [1, 3, 5, 2, 4]}", "Stage 1 would be accepted up to 105 N·m", "ends below" },
        { FinalStage, "{value: 110 N·m, permitted: 105..115 N·m, visits: [1, 3, 5, 2, 4]}", "Group “nuts” is class A and nobody looks at its final stage", "witness: true" },
        { "jam: {group: jam,", "jam: {group: jamm,", "There is no group “jamm” for the jam nuts", "did you mean “jam”" },
        { "jam: {group: jam, torque: 90 N·m", "jam: {group: jam, torque: 80 N·m", "Here the nuts are jammed at 80 N·m, group “jam” has 90 N·m", "same value" },
        { "temporary: true", "temporary: false", "Group “jam” is not temporary, its joint kind “wheel.stud-jam-pair” is", "both the same" },
        { "id: drive", "id: open", "The step “open” comes twice", "an id of its own" },
        { "opens: [wheel.nut, wheel.stud]", "opens: [wheel.nutt, wheel.stud]", "The joint register has no “wheel.nutt”", "did you mean “wheel.nut”" },
        { "opens: [wheel.nut, wheel.stud]", "opens: [wheel.stud-jam-pair]", "“wheel.stud-jam-pair” is temporary", "stay on the car" },
        { "work: [{group: nuts, stages: [1]}]", "work: [{group: nut, stages: [1]}]", "There is no group “nut”", "did you mean “nuts”" },
        { "work: [{group: nuts, stages: [2]}]", "work: [{group: nuts, stages: [3]}]", "Group “nuts” has no stage 3", "it has 2" },
        { "work: [{group: nuts, stages: [2]}]", "work: [{group: nuts, stages: []}]", "No stage is named", "hand" },
        { "interleaved: true", "interleaved: false", "Step “drive” drives “stud” without its jam nuts “jam”", "interleaved: true" },
        { Waits, "waits-for: [drivve]", "There is no step “drivve” to wait for", "did you mean “drive”" },
        { Waits, "waits-for: [{group: studs, stage: 1}]", "There is no group “studs” to wait for", "did you mean “stud”" },
        { Waits, "waits-for: [{group: stud, stage: 2}]", "Group “stud” has no stage 2", "it has 1" },
        { Waits, "waits-for: [{result: alignmet}]", "The register has no result “alignmet”", "did you mean “alignment”" },
        { Waits, "waits-for: [{cure: studs, hours: 24 h}]", "There is no group “studs” to wait for", "did you mean" },
        { Waits, "waits-for: [{cure: stud, hours: 24}]", "“24” is not a number of h", "with its unit" },
        { Waits, "waits-for: [{stage: 1}]", "It is not clear what is waited for", "a step's id" },
        { "measures: [" + Gap, "measures: [{id: gap, text: Gap, unit: mm, min: 0, max: 0.5}", "The limits of “gap” have no source", "at the step" },
        { "measures: [" + Gap, "measures: [{id: gap, text: Gap, unit: mm}, {id: gap, text: Gap, unit: mm}", "The measure “gap” comes twice", "of its own" },
        { "ticks: [{id: mark, text: Line across all five}]", "ticks: [{id: mark, text: a}, {id: mark, text: b}]", "The tick “mark” comes twice", "of its own" },
        { "lines: [Pull to 50]", "lines: []", "The step has no line", "one action" },
        { "lines: [Pull to 50]", "lines: [Pull to 50]\n    records: [weights]", "The register has no result “weights”", "known here" },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public void A_fault_is_named_on_its_line_and_nothing_is_taken(string part, string instead, string what, string next)
    {
        var loaded = Written.With(part, instead);
        Assert.Null(loaded.Value);
        var found = loaded.Errors.FirstOrDefault(problem => problem.What.Contains(what, StringComparison.Ordinal));
        Assert.True(found is not null, $"Not said: {what}. Said:\n{string.Join("\n", loaded.Problems)}");
        Assert.Contains(next, found.Next, StringComparison.Ordinal);
        var last = Written.LineOf(part) + instead.Count(letter => letter == '\n');
        Assert.True(found.Line <= last, $"Said on line {found.Line}, written on line {last}");
        Assert.True(found.Line >= LineOfItsItem(Written.LineOf(part)), $"Said on line {found.Line}, written on line {last}");
    }

    [Fact]
    public void The_line_and_column_are_those_of_the_value_itself()
    {
        var found = Assert.Single(Written.With("key: wheel.nut\n", "key: wheel.nutt\n").Errors, problem => problem.What.Contains("wheel.nutt", StringComparison.Ordinal));
        Assert.Equal((Written.LineOf("key: wheel.nut\n"), 10), (found.Line, found.Column));
        Assert.Equal("groups[3].key", found.Path);
        Assert.Equal($"{found.Line}:10: error: groups[3].key: The joint register has no “wheel.nutt” — did you mean “wheel.nut”", found.ToString());
    }

    [Fact]
    public void Everything_wrong_is_said_at_once()
    {
        var text = Written.Sound.Replace("title: Test fit", "titel: Test fit", StringComparison.Ordinal)
            .Replace("thread: M12x1.5\n    condition", "thread: M12x9\n    condition", StringComparison.Ordinal)
            .Replace("key: wheel.nut\n", "key: wheel.nutt\n", StringComparison.Ordinal)
            .Replace(Waits, "waits-for: [final]", StringComparison.Ordinal);
        var said = Written.Load(text).Errors.Select(problem => problem.What).ToList();
        Assert.Contains("The key “titel” is not known here", said);
        Assert.Contains("“title” is missing", said);
        Assert.Contains(said, what => what.Contains("has a pitch of 9 mm", StringComparison.Ordinal));
        Assert.Contains("The joint register has no “wheel.nutt”", said);
        Assert.Contains("Steps wait for each other: low → final → low", said);
    }

    [Fact]
    public void A_group_without_a_source_is_named_once()
    {
        var text = Written.Sound.Replace("    source: {document: Sheet, revision: \"1\", page: \"2\", basis: stated}\n    stages", "    stages", StringComparison.Ordinal);
        var found = Assert.Single(Written.Load(text).Errors);
        Assert.Equal("Group “nuts” has no source: its numbers come from nowhere", found.What);
        Assert.Equal(Written.LineOf("id: nuts"), found.Line);
    }

    [Theory]
    [InlineData("{document: Sheet, revision: \"1\", page: \"2\", basis: shop decision}", "does not say who decided and why")]
    [InlineData("{document: Sheet, revision: \"1\", page: \"2\", basis: stated, why: because}", "A stated value has")]
    [InlineData("{document: Sheet, page: \"2\", basis: stated}", "“revision” is missing")]
    public void A_stage_with_half_a_source_is_refused(string source, string what)
    {
        var loaded = Written.With(FinalStage, FinalStage.TrimEnd('}') + ", source: " + source + "}");
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors);
        Assert.Contains(what, found.What, StringComparison.Ordinal);
        Assert.Equal(Written.LineOf(FinalStage), found.Line);
    }

    [Fact]
    public void A_final_stage_that_no_step_does_is_named()
    {
        var found = Assert.Single(Written.With("work: [{group: nuts, stages: [2]}]", "work: []").Errors);
        Assert.Equal("No step does the final stage of group “nuts”", found.What);
        Assert.Equal(Written.LineOf("id: nuts"), found.Line);
    }

    [Fact]
    public void A_stage_done_by_two_steps_is_named()
    {
        var found = Assert.Single(Written.With("work: [{group: nuts, stages: [2]}]", "work: [{group: nuts, stages: [1, 2]}]").Errors);
        Assert.Equal("Two steps do stage 1 of group “nuts” at front-left: “low” and “final”", found.What);
    }

    [Theory]
    [InlineData("waits-for: [low]", "low → low")]
    [InlineData("waits-for: [final]", "low → final → low")]
    [InlineData("waits-for: [{group: nuts, stage: 2}]", "low → final → low")]
    public void Steps_that_wait_for_each_other_are_named_as_a_loop(string waits, string loop)
    {
        var found = Assert.Single(Written.With(Waits, waits).Errors);
        Assert.Equal($"Steps wait for each other: {loop}", found.What);
    }

    [Fact]
    public void A_later_stage_in_an_earlier_step_is_a_loop_too()
    {
        var text = Written.Sound.Replace("work: [{group: nuts, stages: [1]}]", "work: [{group: nuts, stages: [9]}]", StringComparison.Ordinal)
            .Replace("work: [{group: nuts, stages: [2]}]", "work: [{group: nuts, stages: [1]}]", StringComparison.Ordinal)
            .Replace("stages: [9]", "stages: [2]", StringComparison.Ordinal);
        Assert.Contains(Written.Load(text).Errors, problem => problem.What.StartsWith("Steps wait for each other", StringComparison.Ordinal));
    }

    [Fact]
    public void A_place_where_the_joint_is_not_is_named()
    {
        var loaded = Written.With(
            "lines: [Pull to 110]", "lines: [Pull to 110]\n    opens: [front-strut.top-nut]");
        var found = Assert.Single(loaded.Errors);
        Assert.Equal("“front-strut.top-nut” is not at rear-left, rear-right", found.What);
    }

    [Fact]
    public void A_step_that_asks_for_nothing_is_refused()
    {
        var found = Assert.Single(Written.With("    opens: [wheel.nut, wheel.stud]\n", "").Errors);
        Assert.Equal("Step “open” asks for nothing: it could be signed without looking", found.What);
    }

    [Fact]
    public void A_target_above_what_the_jam_takes_is_the_specification_validators_error()
    {
        var loaded = Written.With(StudStage, "{value: 85 N·m, permitted: 55..95 N·m, witness: true, visits: [1, 3, 5, 2, 4]}");
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors);
        Assert.Contains("85 N·m is above 83.0 N·m, the most that two nuts jammed at 90 N·m take", found.What, StringComparison.Ordinal);
        Assert.Equal(Written.LineOf("id: stud\n"), found.Line);
    }

    [Fact]
    public void The_specification_validators_warnings_are_cautions_of_the_group()
    {
        var loaded = Written.With("    seat: {kind: cone, angle: 60 deg, mean-diameter: 16.25 mm}\n", "");
        Assert.NotNull(loaded.Value);
        var found = Assert.Single(loaded.Cautions, problem => problem.What.StartsWith("Group “nuts”", StringComparison.Ordinal));
        Assert.Contains("band not computed for this: no seat is given", found.What, StringComparison.Ordinal);
        Assert.Equal(Written.LineOf("id: nuts"), found.Line);
    }

    [Fact]
    public void One_value_that_a_reading_must_hit_exactly_is_a_caution()
    {
        var loaded = Written.With("evidence: setting, ", "");
        Assert.Contains(loaded.Cautions, problem => problem.What.Contains("only 90 N·m exactly is permitted", StringComparison.Ordinal));
    }

    [Fact]
    public void Procedure_cautions_must_be_a_list_of_texts_too()
    {
        var loaded = Written.With("demo-data: true", "demo-data: true\ncautions: {a: b}");
        Assert.Null(loaded.Value);
        Assert.Equal("A set of keys is here, a list is needed", Assert.Single(loaded.Errors).What);
    }

    /// <summary>A problem may point at the item that lacks something: the nearest line above that starts one.</summary>
    private static int LineOfItsItem(int line)
    {
        var lines = Written.Sound.Split('\n');
        while (line > 1 && !lines[line - 1].StartsWith("  - id:", StringComparison.Ordinal) && line > 4)
        {
            line--;
        }

        return lines[line - 1].StartsWith("  - id:", StringComparison.Ordinal) ? line : 1;
    }
}
