using System.Text;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>Kinds of car in the register, and procedures that say which they fit.</summary>
public class CarKindDocumentTests
{
    private const string Sound = """
        title: Test register
        demo-data: true
        results: [alignment]
        kinds:
          - {key: wheel.stud, name: wheel stud, system: wheels, places: [front-left, rear-left], positions: 5, filled-by: stud}
          - {key: wheel.nut, name: wheel nut, system: wheels, places: [front-left, rear-left], positions: 5, filled-by: nut, rides-on: wheel.stud}
          - {key: bar.link, name: bar link, system: bars, places: [front], positions: 1, filled-by: nut, undoes: [alignment]}
        cars:
          four-stud:
            name: four studs a wheel, no bar
            positions: {wheel.stud: 4, wheel.nut: 4}
            lacks: [bar.link]
            adds:
              - {key: hub.nut, name: hub nut, system: hubs, places: [front-left], positions: 1, filled-by: nut}
          front-only:
            name: wheels at the front alone
            places: {wheel.stud: [front-left], wheel.nut: [front-left]}
        """;

    [Fact]
    public void A_kind_of_car_is_the_base_and_what_differs()
    {
        var register = Sure(Sound);
        var four = register.For(new JointList("four-stud", []));

        Assert.Equal(["hub.nut", "wheel.nut", "wheel.stud"], four.Kinds.Keys.Order(StringComparer.Ordinal));
        Assert.Equal([4, 4], four.Kinds["wheel.nut"].Places.Select(four.Kinds["wheel.nut"].PositionsAt));
        Assert.Equal(["front-left"], register.For(new JointList("front-only", [])).Kinds["wheel.nut"].Places);
        Assert.Equal(5, register.Kinds["wheel.nut"].Positions);
        Assert.Equal("bar link", four.NameOf("bar.link"));
        Assert.Same(register, four.For(JointList.OfTheRegister));
        Assert.Empty(register.For(new JointList(JointList.None, [])).Kinds);
        Assert.Empty(register.For(new JointList("unheard-of", [])).Kinds);
    }

    [Fact]
    public void A_car_may_have_its_own_count_at_one_place()
    {
        var own = Sure(Sound).For(new JointList("four-stud", [new JointCount("wheel.nut", "rear-left", 6)]));

        Assert.Equal([4, 6], new[] { "front-left", "rear-left" }.Select(own.Kinds["wheel.nut"].PositionsAt));
        Assert.True(own.Has(new JointPosition("wheel.nut", "rear-left", 6)));
        Assert.False(own.Has(new JointPosition("wheel.nut", "front-left", 5)));
        Assert.Equal(["wheel.stud", "wheel.nut"], own.Riding("wheel.nut").Select(kind => kind.Key));
    }

    [Theory]
    [InlineData("wheel.stud: 4, wheel.nut: 4", "wheel.stud: 4", 10, "“wheel.nut” and “wheel.stud”, on which it rides, differ in places or positions on this car")]
    [InlineData("lacks: [bar.link]", "lacks: [wheel.stud]", 11, "“wheel.stud” is changed here and lacking as well")]
    [InlineData("lacks: [bar.link]", "lacks: [bar.lonk]", 12, "There is no joint kind “bar.lonk” in this register")]
    [InlineData("{key: hub.nut,", "{key: bar.link,", 14, "The joint kind “bar.link” is in the register already")]
    [InlineData("wheel.nut: 4}", "wheel.nut: 0}", 11, "“0” is not a whole number from 1 to 100")]
    [InlineData("wheel.nut: 4}", "wheel.nut: -4}", 11, "“-4” is not a whole number from 1 to 100")]
    [InlineData("wheel.nut: 4}", "wheel.nut: 4000}", 11, "“4000” is not a whole number from 1 to 100")]
    [InlineData("  front-only:", "  base:", 16, "“base” is no name for a kind of car: it has a meaning of its own")]
    [InlineData("    name: wheels at the front alone\n", "", 16, "“name” is missing")]
    [InlineData("positions: {wheel.stud: 4, wheel.nut: 4}", "positions: [4, 4]", 11, "“positions” needs joint kinds, each with what it is on this car")]
    [InlineData("places: {wheel.stud: [front-left], wheel.nut: [front-left]}", "places: {wheel.stud: [], wheel.nut: []}", 17, "The list of places is empty")]
    public void A_fault_is_named_on_its_line_and_nothing_is_taken(string part, string instead, int line, string what)
    {
        Assert.Contains(part, Sound, StringComparison.Ordinal);
        var loaded = Load(Sound.Replace(part, instead, StringComparison.Ordinal));
        Assert.Null(loaded.Value);
        var found = loaded.Errors.FirstOrDefault(problem => problem.What == what);
        Assert.True(found is not null, $"Not said: {what}. Said:\n{string.Join("\n", loaded.Problems)}");
        Assert.Equal(line, found.Line);
    }

    [Theory]
    [InlineData("[1, 3, 5, 2, 4]", "", "base", true)]
    [InlineData("[1, 3, 2, 4]", "", "four-stud", true)]
    [InlineData("[1, 3, 2, 4]", "fits: [four-stud]", "four-stud", true)]
    [InlineData("[1, 3, 2, 4]", "fits: [base]", "The visits leave out position 5", false)]
    [InlineData("[1, 3, 2, 4]", "fits: [four-stud, base]", "The visits leave out position 5", false)]
    [InlineData("[1, 2, 3]", "", "The visits leave out position 4, 5", false)]
    [InlineData("[1, 3, 2, 4]", "fits: [four-stad]", "The register has no kind of car “four-stad”", false)]
    [InlineData("[1, 3, 2, 4]", "fits: [none]", "The register has no kind of car “none”", false)]
    public void A_procedure_is_checked_on_the_cars_it_fits(string visits, string fits, string said, bool isTaken)
    {
        var text = $$"""
            code: P5
            title: Fit wheels
            revision: "1"
            demo-data: true
            {{fits}}
            groups:
              - id: nuts
                name: Nuts
                key: wheel.nut
                thread: M12x1.5
                condition: dry
                risk: B
                hardware: {name: nut, reuse: allowed}
                re-torque: none
                source: {document: Sheet, revision: "1", page: "2", basis: stated}
                stages: [{value: 110 N·m, permitted: 105..115 N·m, visits: {{visits}}}]
            steps:
              - {id: final, title: Final stage, per: place, places: [front-left], lines: [Pull], work: [{group: nuts, stages: [1]}]}
            """;

        var loaded = ProcedureDocument.Load(Encoding.UTF8.GetBytes(text), "p5.yaml", Sure(Sound));

        Assert.Equal(isTaken, loaded.Value is not null);
        if (isTaken)
        {
            Assert.NotNull(ProcedureDocument.LoadFor(Encoding.UTF8.GetBytes(text), "p5.yaml", Sure(Sound), said).Value);
            return;
        }

        Assert.Contains(said, loaded.Errors.Select(problem => problem.What));
    }

    private static JointRegister Sure(string text)
    {
        var loaded = Load(text);
        Assert.Empty(loaded.Problems.Select(problem => problem.ToString()));
        return loaded.Value!;
    }

    private static LoadedDocument<JointRegister> Load(string text) => JointRegisterDocument.Load(Encoding.UTF8.GetBytes(text), "test.yaml");
}
