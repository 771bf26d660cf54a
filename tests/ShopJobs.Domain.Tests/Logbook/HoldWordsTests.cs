using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

public sealed class HoldWordsTests
{
    private static readonly JointPosition Nut = new(TestRegister.Nut, TestRegister.Left, 3);

    private static readonly HoldNames Names = new(joint => $"wheel nut {joint.Place}", at => at.AddHours(2));

    public static TheoryData<HoldReason> Reasons => [.. Enum.GetValues<HoldReason>()];

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Every_reason_says_what_is_wrong_and_what_to_do(HoldReason reason)
    {
        var said = HoldWords.Say(new HoldPoint(reason), HoldNames.Plain);

        Assert.NotEqual(reason.ToString(), said.Words);
        Assert.False(string.IsNullOrWhiteSpace(said.Words));
        Assert.False(string.IsNullOrWhiteSpace(said.Next));
        Assert.NotEqual('.', said.Words[^1]);
        Assert.NotEqual('.', said.Next[^1]);
    }

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Nothing_is_left_blank_where_the_reason_is_told_everything(HoldReason reason)
    {
        var said = HoldWords.Say(Complete(new HoldPoint(reason)), Names);

        foreach (var words in new[] { said.Words, said.Next })
        {
            Assert.DoesNotContain("“”", words, StringComparison.Ordinal);
            Assert.DoesNotContain("  ", words, StringComparison.Ordinal);
            Assert.Equal(words.Trim(), words);
        }
    }

    [Fact]
    public void Fasteners_that_share_a_reason_are_named_together()
    {
        var point = new HoldPoint(HoldReason.NotRunDown) { Position = Nut };

        Assert.Equal("wheel nut front-left 3 is not run down by hand: press HAND-TIGHT when it is", HoldWords.Say(point, Names).ToString());
        Assert.Equal("wheel nut front-left 1 to 3, 5 are not run down by hand", HoldWords.Say(point, Names, [1, 2, 3, 5]).Words);
    }

    [Fact]
    public void What_was_held_for_is_said_with_the_hold()
    {
        var held = new HoldPoint(HoldReason.Held) { Position = Nut, Because = new HoldPoint(HoldReason.OverRange) };

        Assert.Equal("wheel nut front-left 3: held: over the permitted maximum", HoldWords.Say(held, Names).Words);
        Assert.Equal(HoldWords.Next(HoldReason.OverRange), HoldWords.Say(held, Names).Next);
        Assert.Equal("wheel nut front-left 3: held: to be replaced", HoldWords.Say(held with { Decision = Disposition.Replace }, Names).Words);
    }

    [Fact]
    public void Instant_is_said_by_the_shops_clock()
    {
        var cure = new HoldPoint(HoldReason.Cure) { Name = "studs", Until = new DateTime(2026, 5, 4, 10, 30, 0, DateTimeKind.Utc) };

        Assert.Equal("studs: the locker cures until 4 May 2026, 12:30", HoldWords.Say(cure, Names).Words);
    }

    [Fact]
    public void What_changed_since_it_was_shown_is_named_with_its_hour()
    {
        var again = new HoldPoint(HoldReason.LookAgain) { Position = Nut, About = Change.Pulled, At = new DateTime(2026, 5, 4, 12, 2, 0, DateTimeKind.Utc) };

        Assert.Equal("wheel nut front-left 3 was pulled again at 14:02, after this was shown", HoldWords.Say(again, Names).Words);
        Assert.Equal("Something changed after this was shown", HoldWords.Say(new HoldPoint(HoldReason.LookAgain), Names).Words);
    }

    [Fact]
    public void What_it_sits_on_is_named_with_what_is_wrong_there()
    {
        var ridden = new HoldPoint(HoldReason.NotAtStage) { Position = Nut.Joint.At(1), Reached = new StageReached(Fitting.HandTight, 0, 1, false, false) };

        var said = HoldWords.Say(new HoldPoint(HoldReason.RidesOnLoose) { Position = Nut, Because = ridden }, Names);

        Assert.Equal("wheel nut front-left 3: it sits on wheel nut front-left 1: hand-tight", said.Words);
        Assert.Equal("torque it", said.Next);
    }

    [Fact]
    public void What_a_trainee_pulled_is_countersigned_and_not_pulled_again()
    {
        var said = HoldWords.Say(
            new HoldPoint(HoldReason.NotAtStage) { Position = Nut, Reached = new StageReached(Fitting.HandTight, 0, 2, false, false) { Awaited = true } }, Names);

        Assert.Equal("wheel nut front-left 3: pulled by a trainee, not countersigned", said.Words);
        Assert.Equal("do not pull it again: whoever stood by countersigns it", said.Next);
    }

    private static HoldPoint Complete(HoldPoint point) => point with
    {
        Position = Nut,
        Because = new HoldPoint(HoldReason.OverRange) { Position = Nut },
        Name = "alignment",
        Choices = ["front-left", "rear"],
        Unsigned = new UnsignedStep(new StepInstance("turn", TestProcedures.Step("turn", []), null, []), StepStanding.Void),
        Reached = new StageReached(Fitting.HandTight, 1, 2, false, false),
        Otherwise = new TorquedOtherwise("P6", "90°", ThreadCondition.Dry, "91 to 101°", ThreadCondition.Dry),
        Measure = new Measure("depth", "Depth", "mm", 1, 2),
        Value = new MeasuredValue("depth", 3, "mm"),
        Hours = 24,
        Until = new DateTime(2026, 5, 4, 10, 30, 0, DateTimeKind.Utc),
        Day = new DateOnly(2026, 5, 4),
        Tool = new TorqueTool(null, "W7", "7001", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 0.5m, 4),
        Right = Right.Decide,
        About = Change.Opened,
        Km = 48210.5m,
        At = new DateTime(2026, 5, 4, 12, 2, 0, DateTimeKind.Utc),
        Entry = 80,
    };
}
