using System.Text;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>How the fasteners of a joint lie, as the register writes it.</summary>
public class JointDrawingDocumentTests
{
    [Fact]
    public void Rows_keep_their_gaps_and_the_words_at_the_sides()
    {
        var drawing = Load("{rows: [\"1 2\", \". 3\"], top: front, left: exhaust side}").Value!.Kinds["flange"].Drawing!;

        Assert.Equal([[1, 2], [0, 3]], drawing.Rows);
        Assert.Equal(("front", null, "exhaust side"), (drawing.Top, drawing.Bottom, drawing.Left));
    }

    [Fact]
    public void A_circle_goes_one_way_or_the_other()
    {
        Assert.True(Load("{round: clockwise}").Value!.Kinds["flange"].Drawing is { IsRound: true, IsClockwise: true });
        Assert.False(Load("{round: anticlockwise}").Value!.Kinds["flange"].Drawing!.IsClockwise);
    }

    [Theory]
    [InlineData("{rows: [\"1 2\"]}", "The rows do not hold each number from 1 to 3 once")]
    [InlineData("{rows: [\"1 2\", \"2 3\"]}", "The rows do not hold each number from 1 to 3 once")]
    [InlineData("{rows: [\"1 2\", \"3 x\"]}", "“x” is no number of a fastener")]
    [InlineData("{rows: [\"1 2 3\"], round: clockwise}", "A drawing has “rows” or “round”, one of them")]
    [InlineData("{top: front}", "A drawing has “rows” or “round”, one of them")]
    public void A_fault_is_said(string drawing, string what) =>
        Assert.Contains(what, Load(drawing).Errors.Select(problem => problem.What));

    private static LoadedDocument<JointRegister> Load(string drawing) => JointRegisterDocument.Load(
        Encoding.UTF8.GetBytes($"title: T\ndemo-data: true\nkinds:\n  - {{key: flange, name: flange bolt, system: drive, places: [driveline], positions: 3, filled-by: bolt, drawing: {drawing}}}\n"),
        "register.yaml");
}
