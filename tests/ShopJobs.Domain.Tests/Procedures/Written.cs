using System.Text;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>A small sound procedure, and the same with a line changed.</summary>
internal static class Written
{
    public const string Sound = """
        code: T1
        title: Test fit
        revision: "1"
        demo-data: true
        groups:
          - id: jam
            name: Jam nuts
            key: wheel.stud-jam-pair
            thread: M12x1.5
            condition: dry
            risk: C
            hardware: {name: jam nut, reuse: allowed}
            re-torque: none
            temporary: true
            source: {document: Sheet, revision: "1", page: "1", basis: stated}
            stages:
              - {value: 90 N·m, permitted: 90 N·m, evidence: setting, visits: [1, 2, 3, 4, 5]}
          - id: stud
            name: Stud
            key: wheel.stud
            thread: M12x1.5
            class: "10.9"
            seat: {kind: flat, head: 16.6 mm, hole: 13.5 mm}
            condition: dry
            risk: A
            hardware: {name: stud, reuse: single-use}
            re-torque: none
            jam: {group: jam, torque: 90 N·m, tool-deviation: 4 %}
            source: {document: Sheet, revision: "1", page: "1", basis: stated}
            stages:
              - {value: 60 N·m, permitted: 55..65 N·m, witness: true, visits: [1, 3, 5, 2, 4]}
          - id: nuts
            name: Nuts
            key: wheel.nut
            thread: M12x1.5
            class: "10.9"
            seat: {kind: cone, angle: 60 deg, mean-diameter: 16.25 mm}
            condition: dry
            risk: A
            hardware: {name: nut, reuse: allowed}
            re-torque: {after: 50 km, before: 100 km, within: 30 days}
            source: {document: Sheet, revision: "1", page: "2", basis: stated}
            stages:
              - {value: 50 N·m, conditions: {stand: wheel-up}, visits: [1, 3, 5, 2, 4]}
              - {value: 110 N·m, permitted: 105..115 N·m, witness: true, visits: [1, 3, 5, 2, 4]}
        steps:
          - id: open
            title: Open
            per: place
            places: [front-left, front-right, rear-left, rear-right]
            opens: [wheel.nut, wheel.stud]
            lines: [Take the wheel off]
          - id: drive
            title: Drive
            per: place
            places: [front-left, front-right, rear-left, rear-right]
            lines: [Drive the studs]
            work: [{group: jam, stages: [1]}, {group: stud, stages: [1]}]
            interleaved: true
          - id: low
            title: Lower stage
            per: place
            places: [front-left, front-right, rear-left, rear-right]
            lines: [Pull to 50]
            work: [{group: nuts, stages: [1]}]
            source: {document: Sheet, revision: "1", page: "2", basis: stated}
            waits-for: [drive, {group: stud, stage: 1}, {cure: stud, hours: 24 h}]
          - id: final
            title: Final stage
            per: place
            places: [front-left, front-right, rear-left, rear-right]
            lines: [Pull to 110]
            work: [{group: nuts, stages: [2]}]
            ticks: [{id: mark, text: Line across all five}]
            measures: [{id: gap, text: Gap, unit: mm, min: 0, max: 0.5, source: {document: Sheet, revision: "1", page: "2", basis: stated}}]
        """;

    public static int LineOf(string part)
    {
        var at = Sound.IndexOf(part, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The sound document does not hold “{part}”.");
        Assert.True(Sound.IndexOf(part, at + 1, StringComparison.Ordinal) < 0, $"“{part}” is in the sound document twice.");
        return 1 + Sound[..at].Count(letter => letter == '\n');
    }

    public static LoadedDocument<Procedure> Load(string text) => Load(Encoding.UTF8.GetBytes(text));

    public static LoadedDocument<Procedure> Load(byte[] bytes) => ProcedureDocument.Load(bytes, "test.yaml", Seed.Register);

    /// <summary>Loads the sound document with one part written differently.</summary>
    public static LoadedDocument<Procedure> With(string part, string instead)
    {
        LineOf(part);
        return Load(Sound.Replace(part, instead, StringComparison.Ordinal));
    }
}
