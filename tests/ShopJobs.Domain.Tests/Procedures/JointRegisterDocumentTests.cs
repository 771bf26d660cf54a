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
          steering: [straight, turned]
          stand: {values: [wheel-up, on-wheels], of: place, ends-at: [wheel.nut]}
          engine: {values: [cold], of: car, lasts: 4 h}
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

    [Fact]
    public void An_aspect_says_of_what_it_is_how_long_it_lasts_and_which_opening_ends_it()
    {
        var register = Load(Sound).Value!;
        var stand = register.AspectOf("stand");
        Assert.Equal((true, null), (stand.OfPlace, stand.LastsHours));
        Assert.Equal(["wheel.nut"], stand.EndsAt);
        var engine = register.AspectOf("engine");
        Assert.Equal((false, 4m), (engine.OfPlace, engine.LastsHours));
        Assert.Empty(engine.EndsAt);
        Assert.Equal(ConditionAspect.OfCar, register.AspectOf("steering"));
        Assert.Equal(["straight", "turned"], register.Conditions["steering"]);
    }

    [Theory]
    [InlineData("ends-at: [wheel.nut]", "ends-at: [wheel.nutt]", "did you mean “wheel.nut”")]
    [InlineData("of: place", "of: corner", "known here: car, place")]
    [InlineData("lasts: 4 h", "lasts: 4", "write it with its unit, for example 1 h")]
    public void A_fault_of_an_aspect_says_what_to_do(string part, string instead, string next)
    {
        Assert.Contains(part, Sound, StringComparison.Ordinal);
        Assert.Equal([next], Load(Sound.Replace(part, instead, StringComparison.Ordinal)).Errors.Select(problem => problem.Next));
    }

    [Theory]
    [InlineData("key: wheel.nut,", "key: wheel.stud,", 12, "The joint kind “wheel.stud” comes twice, first on line 11")]
    [InlineData("rides-on: wheel.stud", "rides-on: wheel.studd", 12, "“wheel.nut” rides on “wheel.studd”, which is not in this register")]
    [InlineData("positions: 5, filled-by: nut", "positions: 4, filled-by: nut", 12, "“wheel.nut” and “wheel.stud”, on which it rides, differ in places or positions")]
    [InlineData("filled-by: stud", "filled-by: stud, rides-on: wheel.nut", 11, "Joints ride on each other in a loop: wheel.stud → wheel.nut → wheel.stud")]
    [InlineData("filled-by: stud", "filled-by: stud, behind: wheel.nutt", 11, "“wheel.stud” is behind “wheel.nutt”, which is not in this register")]
    [InlineData("filled-by: stud", "filled-by: stud, behind: wheel.stud", 11, "“wheel.stud” is behind “wheel.stud”, which is behind a joint itself")]
    [InlineData("undoes: [alignment,", "undoes: [alignmnt,", 13, "There is no result “alignmnt” in this register")]
    [InlineData("setting:front-bar", "setting:rear-bar", 13, "There is no setting “rear-bar” in this register")]
    [InlineData("joint:wheel.nut", "joint:wheel.nux", 13, "There is no joint kind “wheel.nux” in this register")]
    [InlineData("front-bar: [alignment]", "front-bar: [weights]", 9, "There is no result “weights” in this register")]
    [InlineData("system: arms", "system: hubs", 13, "“arm.pivot” belongs to hubs: hand-tight never moves there")]
    [InlineData("system: arms", "system: arm", 13, "“arm” is not one of the words for “system”")]
    [InlineData("least: {move: hand-tight}", "least: {road: hand-tight}", 13, "“arm.pivot” would be hand-tight on the road")]
    [InlineData(", least-why: ride height", "", 13, "“arm.pivot” may move hand-tight and no reason is given")]
    [InlineData("least-why: ride height", "least-why: ride height, temporary: true", 13, "“arm.pivot” is temporary and undoes something")]
    [InlineData("positions: 1", "positions: 0", 13, "“0” is not a whole number from 1 to 100")]
    [InlineData("key: arm.pivot", "key: Arm.Pivot", 13, "“Arm.Pivot” is not a short name")]
    [InlineData("steering: [straight, turned]", "steering: []", 5, "The list of values is empty")]
    [InlineData("steering: [straight, turned]", "steering: [straight, straight]", 5, "The value “straight” comes twice")]
    [InlineData("steering: [straight, turned]", "steering: straight", 5, "A text is here, a list is needed")]
    [InlineData("{values: [wheel-up, on-wheels], of", "{of", 6, "“values” is missing")]
    [InlineData("{values: [wheel-up, on-wheels], of", "{values: [Wheel-Up], of", 6, "“Wheel-Up” is not a short name")]
    [InlineData("of: place", "of: corner", 6, "“corner” is not one of the words for “of”")]
    [InlineData("ends-at: [wheel.nut]", "ends-at: [wheel.nutt]", 6, "There is no joint kind “wheel.nutt” in this register")]
    [InlineData("ends-at: [wheel.nut]", "ends-at: wheel.nut", 6, "A text is here, a list is needed")]
    [InlineData("ends-at: [wheel.nut]", "ends-at: [wheel.nut, wheel.nut]", 6, "The joint kind “wheel.nut” comes twice")]
    [InlineData("ends-at: [wheel.nut]", "ends: [wheel.nut]", 6, "The key “ends” is not known here")]
    [InlineData("lasts: 4 h", "lasts: 4", 7, "“4” is not a number of h from 0.1 to 8760")]
    [InlineData("lasts: 4 h", "lasts: 0 h", 7, "“0 h” is not a number of h from 0.1 to 8760")]
    [InlineData("places: [front-left], positions: 1", "places: [], positions: 1", 13, "The list of places is empty")]
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
