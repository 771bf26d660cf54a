using System.Text;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

public class ResultKindDocumentTests
{
    private const string Sound = """
        title: Test register
        demo-data: true
        results:
          run-out: {name: run-out of the disc, of: place, instrument: needed, source: {document: Sheet, revision: "1", page: "2", basis: stated}, measures: [{id: run-out, text: Run-out, unit: mm, max: 0.08}]}
          bleed: {notes: [{id: grade, text: Grade, one-of: [DOT 4, DOT 5.1]}, {id: opened, text: Bottle opened, day: true}]}
          bed-in: {after: drive, measures: [{id: stops, text: Stops, unit: stops}]}
        settings:
          front-bar: {undoes: [bleed], measures: [{id: hole, text: Hole, unit: hole}]}
        kinds:
          - {key: brake.screw, name: screw, system: brakes, places: [front-left, rear-left], positions: 1, filled-by: bolt, undoes: [run-out]}
          - {key: bar.link, name: link, system: bars, places: [front], positions: 1, filled-by: nut, undoes: ["setting:front-bar"]}
        """;

    [Fact]
    public void Each_result_says_what_is_recorded_of_it()
    {
        var loaded = Load(Sound);
        Assert.Empty(loaded.Problems.Select(problem => problem.ToString()));
        var register = loaded.Value!;

        var runOut = register.ResultOf("run-out@rear-left");
        Assert.Equal(("run-out of the disc", true, true, false), (runOut.Name, runOut.OfPlace, runOut.NeedsInstrument, runOut.AfterDrive));
        Assert.Equal("at most 0.08 mm", runOut.Measures[0].Limits());
        Assert.Equal("run-out of the disc, rear-left", register.NameOfResult("run-out@rear-left"));
        Assert.Equal(["front-left", "rear-left"], register.PlacesOf(runOut));
        Assert.Equal(["DOT 4", "DOT 5.1"], register.ResultOf("bleed").Notes[0].OneOf);
        Assert.True(register.ResultOf("bleed").Notes[1].IsDay);
        Assert.True(register.ResultOf("bed-in").AfterDrive);
        Assert.Equal("setting front bar", register.NameOfResult("setting:front-bar"));
        Assert.Equal([new Undone(UndoneKind.Result, "bleed")], register.Settings["front-bar"]);
        Assert.Equal(["run-out", "bleed", "bed-in", "setting:front-bar"], register.AllResults.Select(kind => kind.Key));
    }

    [Theory]
    [InlineData("after: drive", "after: lunch", 6, "“lunch” is not one of the words for “after”")]
    [InlineData("instrument: needed", "instrument: yes", 4, "“yes” is not one of the words for “instrument”")]
    [InlineData(", source: {document: Sheet, revision: \"1\", page: \"2\", basis: stated}", "", 4, "The limits of “run-out” have no source")]
    [InlineData("{id: opened, text: Bottle opened, day: true}", "{id: grade, text: Bottle opened}", 5, "The note “grade” comes twice in this result")]
    [InlineData("one-of: [DOT 4, DOT 5.1]", "one-of: [DOT 4], day: true", 5, "The note “grade” is a day and one of some words")]
    [InlineData("bed-in: {after: drive, measures: [{id: stops, text: Stops, unit: stops}]}", "bed-in: {after: drive}", 6, "“bed-in” has neither measures nor notes: there is nothing to record")]
    [InlineData("front-bar: {undoes", "front-bar: {of: place, undoes", 8, "The setting “front-bar” is of a place")]
    public void A_fault_is_named_on_its_line_and_nothing_is_taken(string part, string instead, int line, string what)
    {
        Assert.Contains(part, Sound, StringComparison.Ordinal);
        var loaded = Load(Sound.Replace(part, instead, StringComparison.Ordinal));
        Assert.Null(loaded.Value);
        var found = loaded.Errors.FirstOrDefault(problem => problem.What == what);
        Assert.True(found is not null, $"Not said: {what}. Said:\n{string.Join("\n", loaded.Problems)}");
        Assert.Equal(line, found.Line);
    }

    [Fact]
    public void A_step_per_car_does_not_record_what_each_place_has_for_itself()
    {
        var register = Seed.Register;
        var text = Encoding.UTF8.GetString(Seed.Bytes("procedures/P4-brakes.yaml"));
        Assert.Contains("records: [bleed, pedal-hold]", text, StringComparison.Ordinal);
        var loaded = ProcedureDocument.Load(Encoding.UTF8.GetBytes(text.Replace("records: [bleed, pedal-hold]", "records: [run-out]", StringComparison.Ordinal)), "P4.yaml", register);
        Assert.Contains("Each place has its own “run-out”, and this step is per car", loaded.Errors.Select(problem => problem.What));
    }

    private static LoadedDocument<JointRegister> Load(string text) => JointRegisterDocument.Load(Encoding.UTF8.GetBytes(text), "register.yaml");
}
