using System.Text;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

public class JointRegisterDocumentTests
{
    private const string Sound = """
        title: Test register
        demo-data: true
        results: [alignment]
        conditions:
          stand: [wheel-up, on-wheels]
        settings:
          front-bar: [alignment]
        kinds:
          - {key: wheel.stud, name: stud, system: wheels, places: [front-left], positions: 5, filled-by: stud}
          - {key: wheel.nut, name: nut, system: wheels, places: [front-left], positions: 5, filled-by: nut, rides-on: wheel.stud}
          - {key: arm.pivot, name: pivot, system: arms, places: [front-left], positions: 1, filled-by: bolt, undoes: [alignment, "setting:front-bar", "joint:wheel.nut"], least: {move: hand-tight}, least-why: ride height}
        """;

    [Fact]
    public void A_sound_register_loads_whole()
    {
        var loaded = Load(Sound);
        Assert.Empty(loaded.Problems.Select(problem => problem.ToString()));
        Assert.Equal(3, loaded.Value!.Kinds.Count);
        Assert.Equal(
            [new(UndoneKind.Result, "alignment"), new(UndoneKind.Setting, "front-bar"), new(UndoneKind.Joint, "wheel.nut")],
            loaded.Value.Kinds["arm.pivot"].Undoes);
        Assert.Equal(LeastState.HandTight, loaded.Value.Kinds["arm.pivot"].LeastFor(ReleaseKind.Move));
        Assert.Equal(["wheel-up", "on-wheels"], loaded.Value.Conditions["stand"]);
    }

    [Theory]
    [InlineData("key: wheel.nut,", "key: wheel.stud,", 10, "The joint kind “wheel.stud” comes twice, first on line 9")]
    [InlineData("rides-on: wheel.stud", "rides-on: wheel.studd", 10, "“wheel.nut” rides on “wheel.studd”, which is not in this register")]
    [InlineData("positions: 5, filled-by: nut", "positions: 4, filled-by: nut", 10, "“wheel.nut” and “wheel.stud”, on which it rides, differ in places or positions")]
    [InlineData("filled-by: stud", "filled-by: stud, rides-on: wheel.nut", 9, "Joints ride on each other in a loop: wheel.stud → wheel.nut → wheel.stud")]
    [InlineData("undoes: [alignment,", "undoes: [alignmnt,", 11, "There is no result “alignmnt” in this register")]
    [InlineData("setting:front-bar", "setting:rear-bar", 11, "There is no setting “rear-bar” in this register")]
    [InlineData("joint:wheel.nut", "joint:wheel.nux", 11, "There is no joint kind “wheel.nux” in this register")]
    [InlineData("front-bar: [alignment]", "front-bar: [weights]", 7, "There is no result “weights” in this register")]
    [InlineData("system: arms", "system: hubs", 11, "“arm.pivot” belongs to hubs: hand-tight never moves there")]
    [InlineData("system: arms", "system: arm", 11, "“arm” is not one of the words for “system”")]
    [InlineData("least: {move: hand-tight}", "least: {road: hand-tight}", 11, "“arm.pivot” would be hand-tight on the road")]
    [InlineData(", least-why: ride height", "", 11, "“arm.pivot” may move hand-tight and no reason is given")]
    [InlineData("least-why: ride height", "least-why: ride height, temporary: true", 11, "“arm.pivot” is temporary and undoes something")]
    [InlineData("positions: 1", "positions: 0", 11, "“0” is not a whole number from 1 to 100")]
    [InlineData("key: arm.pivot", "key: Arm.Pivot", 11, "“Arm.Pivot” is not a short name")]
    [InlineData("places: [front-left], positions: 1", "places: [], positions: 1", 11, "The list of places is empty")]
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
    public void A_register_is_told_from_a_procedure_by_its_kinds()
    {
        Assert.True(JointRegisterDocument.IsOne(Encoding.UTF8.GetBytes(Sound)));
        Assert.False(JointRegisterDocument.IsOne(Encoding.UTF8.GetBytes(Written.Sound)));
        Assert.False(JointRegisterDocument.IsOne([0xFF, 0xFE]));
    }

    private static LoadedDocument<JointRegister> Load(string text) =>
        JointRegisterDocument.Load(Encoding.UTF8.GetBytes(text), "register.yaml");
}
