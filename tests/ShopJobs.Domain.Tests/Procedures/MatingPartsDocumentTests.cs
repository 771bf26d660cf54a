using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>What a group says of nut, engaged thread and bearing face, and what comes of it.</summary>
public class MatingPartsDocumentTests
{
    private const string Stud = "jam: {group: jam, torque: 90 N·m, tool-deviation: 4 %}";

    [Fact]
    public void Nut_class_engaged_thread_and_bearing_limit_go_into_the_specification()
    {
        var loaded = WithLines("nut: \"10\"", "engaged: {length: 12.5 mm, tensile: 290 MPa}", "bearing-limit: 220 MPa");

        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        var stud = loaded.Value!.Group("stud").Specification();
        Assert.Equal(
            ("10", 12.5, 290, 220),
            (stud.Nut!.Name, stud.Engaged!.Value.Millimeters, stud.PartTensile!.Value.Megapascals, stud.BearingLimit!.Value.Megapascals));
    }

    // pi/4 (16.6^2 - 13.5^2) = 73.3 mm2, times 220 MPa = 16.1 kN, by hand.
    [Fact]
    public void They_stand_beside_the_clamp_load_as_loads_at_which_something_gives()
    {
        var stud = WithLines("engaged: {length: 12.5 mm, tensile: 290 MPa}", "bearing-limit: 220 MPa").Value!.Group("stud");

        var limits = ClampStanding.Of(stud.Specification(), stud.Final.Value).Limits;

        Assert.Equal([ClampLimitKind.Proof, ClampLimitKind.Bearing, ClampLimitKind.Stripping], limits.Select(limit => limit.Kind));
        Assert.Equal(16.1, limits[1].Load.Kilonewtons, 0.05);
    }

    [Fact]
    public void A_nut_that_is_weaker_than_its_bolt_and_a_face_that_may_give_are_cautions()
    {
        var said = WithLines("nut: \"8\"", "bearing-limit: 220 MPa").Cautions.Select(caution => caution.What).ToList();

        Assert.Contains(said, what => what.Contains("Nut class: ", StringComparison.Ordinal));
        Assert.Contains(said, what => what.Contains("60 N·m may reach it", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("nut: \"11\"", "“11” is not a nut class of ISO 898-2", "8, 9, 10")]
    [InlineData("engaged: {length: 12.5 mm}", "“tensile” is missing", "tensile")]
    [InlineData("engaged: {length: 12.5, tensile: 290 MPa}", "“12.5” is not a number of mm from 0.5 to 200", "with its unit")]
    [InlineData("engaged: {length: -3 mm, tensile: 290 MPa}", "“-3 mm” is not a number of mm", "with its unit")]
    [InlineData("engaged: {length: 12.5 mm, tensile: 290 N·m}", "“290 N·m” is not a number of MPa", "with its unit")]
    [InlineData("bearing-limit: 99999 MPa", "“99999 MPa” is not a number of MPa from 10 to 3000", "with its unit")]
    [InlineData("bearing-limt: 220 MPa", "The key “bearing-limt” is not known here", "did you mean “bearing-limit”")]
    public void A_fault_is_named_on_its_line(string line, string what, string next)
    {
        var loaded = WithLines(line);

        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors, problem => problem.What.Contains(what, StringComparison.Ordinal));
        Assert.Contains(next, found.Next, StringComparison.Ordinal);
        Assert.Equal(Written.LineOf(Stud) + 1, found.Line);
    }

    [Fact]
    public void A_bearing_limit_under_a_cone_is_refused()
    {
        var loaded = Written.With("seat: {kind: cone, angle: 60 deg, mean-diameter: 16.25 mm}", "seat: {kind: cone, angle: 60 deg, mean-diameter: 16.25 mm}\n    bearing-limit: 220 MPa");

        Assert.Contains(loaded.Errors, problem => problem.What == "The pressure under the head is computed on a flat seat only");
    }

    private static Domain.Procedures.Documents.LoadedDocument<Procedure> WithLines(params string[] lines) =>
        Written.With(Stud, string.Join("\n    ", lines.Prepend(Stud)));
}
