using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.JobCards;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Tests.Step;

namespace ShopJobs.Web.Tests.JobCards;

/// <summary>What becomes of a card: late reports of its doer, or declarations, and what is said at which field.</summary>
public sealed class CardPlanTests
{
    private readonly StepBench bench = StepBench.Wheel().HandTight();

    private StepScene Scene => bench.Scene("seat");

    [Fact]
    public void Whole_and_by_its_doer_it_is_the_commands_of_a_queue_with_card_cycle_and_session()
    {
        var facts = Facts();

        var plan = CardPlan.Of(facts, Whole());

        Assert.Empty(plan.Wrong);
        Assert.False(plan.IsDeclared);
        var pulls = plan.Lines.Select(line => line.Make(facts.Reading)).OfType<RecordTorque>().ToList();
        Assert.Equal([1, 3, 5, 2, 4], pulls.Select(pull => pull.Position.Number));
        var paper = new OnPaper(facts.Card!, facts.Moment!.Value);
        Assert.All(pulls, pull => Assert.Equal((paper, facts.Session, 1), (pull.OnPaper!.Value, pull.MadeIn, pull.Cycle)));
    }

    [Fact]
    public void Of_a_moment_in_no_session_it_names_another_one_and_so_is_held()
    {
        var facts = Facts() with { Session = null };

        var pull = CardPlan.Of(facts, Whole()).Lines.Select(line => line.Make(facts.Reading)).OfType<RecordTorque>().First();

        var recorded = (TorqueRecorded)bench.Car.Do(TestPerson.Tess, pull);
        Assert.Equal([HoldReason.EarlierSession], recorded.Problems);
    }

    [Fact]
    public void By_another_or_without_tool_time_car_or_card_it_is_declared_and_says_why()
    {
        Assert.Equal(["it is somebody else's work"], Lacking(typed => typed.IsOwn = false));
        Assert.Equal(["the tool of stage 1 is missing"], Lacking(typed => Stage(typed).Tool = ""));
        Assert.Equal(["how the car stood is missing"], Lacking(typed => typed.Conditions.Clear()));
        Assert.Equal(["date or time is missing"], CardPlan.Of(Facts() with { Moment = null }, Whole()).Lacks);
        Assert.Equal(["no card number is given"], CardPlan.Of(Facts() with { Number = null, PrintedAt = null }, Changed(typed => typed.Number = "")).Lacks);
    }

    [Fact]
    public void Declared_it_keeps_what_the_paper_says_in_words_and_the_nut_stays_as_it_was()
    {
        var facts = Facts();
        var typed = Changed(one => one.IsOwn = false);
        typed.DoneBy = TestPerson.Tess.Id.Value.ToString();

        var line = Assert.Single(CardPlan.Of(facts, typed).Lines);

        Assert.StartsWith($"Card {facts.Card}. ", Text(line), StringComparison.Ordinal);
        Assert.Contains("1, 3, 5, 2, 4. Tool: ", Text(line), StringComparison.Ordinal);
        Assert.Contains($"Done by: {TestPerson.Tess.Name}.", Text(line), StringComparison.Ordinal);
        bench.Car.Do(TestPerson.Theo, line.Make(facts.Reading));
        Assert.Equal(PositionState.HandTight, bench.Car.Shows(bench.Nuts[0]));
    }

    [Fact]
    public void What_is_wrong_is_said_at_its_field()
    {
        Assert.Equal("Write the time like 14:20.", Wrong(typed => typed.Time = "twenty past")["card-time"]);
        Assert.Equal("Say whose work it is.", Wrong(typed => typed.IsOwn = null)["card-own"]);
        Assert.StartsWith("No card of this job", CardPlan.Of(Facts() with { Number = null, PrintedAt = null }, Whole()).Wrong["card-number"], StringComparison.Ordinal);
        Assert.StartsWith("That is still to come", CardPlan.Of(Facts() with { Moment = bench.Car.Now.AddHours(2) }, Whole()).Wrong["card-time"], StringComparison.Ordinal);
        Assert.StartsWith("That is before the card was printed", CardPlan.Of(Facts() with { PrintedAt = bench.Car.Now.AddHours(1) }, Whole()).Wrong["card-time"], StringComparison.Ordinal);
        Assert.Contains("after the time on the paper", CardPlan.Of(Facts() with { PrintedAt = CarAtWork.Start, Moment = CarAtWork.Start }, Whole()).Wrong["card-time"], StringComparison.Ordinal);
        Assert.StartsWith("What it was set to", Wrong(typed => Stage(typed).Setting = "tight").Values.Single(), StringComparison.Ordinal);
        Assert.StartsWith("Tick the fasteners", Wrong(typed => Array.Clear(Stage(typed).Done)).Values.Single(), StringComparison.Ordinal);
        Assert.StartsWith("Nothing of this step", CardPlan.Of(Facts(), new TypedCard { Number = Facts().Card!, IsOwn = true, Time = "14:20" }).Wrong["card-nothing"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14:20", 14, 20)]
    [InlineData("9.05", 9, 5)]
    [InlineData(" 0905 ", 9, 5)]
    public void A_time_is_read_as_people_write_it(string typed, int hour, int minute) => Assert.Equal(new TimeOnly(hour, minute), CardTime.Read(typed));

    private CardFacts Facts()
    {
        var scene = Scene;
        var number = new CardNumber(bench.Car.Last, 0);
        return new CardFacts(
            scene.Reading, scene.Job, scene.Step, number, bench.Car.Now, CardTime.Minute(bench.Car.Now), bench.Car.SessionOf(TestPerson.Tess), scene.Names);
    }

    private TypedCard Whole()
    {
        var typed = new TypedCard { Number = Facts().Card!, IsOwn = true, Day = new DateOnly(2026, 3, 2), Time = "8:20" };
        foreach (var condition in PrintedCard.ConditionsOf(Scene.Step))
        {
            typed.Conditions.Add(condition);
        }

        var stage = Stage(typed);
        stage.Tool = TestTools.Click.Value.ToString();
        stage.Setting = "50";
        Array.Fill(stage.Done, true);
        return typed;
    }

    private TypedStage Stage(TypedCard typed) => typed.Of(Scene.Step.Work[0].Instance).Stages[1];

    private TypedCard Changed(Action<TypedCard> change)
    {
        var typed = Whole();
        change(typed);
        return typed;
    }

    private IReadOnlyList<string> Lacking(Action<TypedCard> change) => CardPlan.Of(Facts(), Changed(change)).Lacks;

    private IReadOnlyDictionary<string, string> Wrong(Action<TypedCard> change) => CardPlan.Of(Facts(), Changed(change)).Wrong;

    private static string Text(CardLine line) => System.Text.Encoding.UTF8.GetString(line.Text!.Bytes);
}
