using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed class SummaryChangesTests
{
    private static readonly WorkSummary Plain = new(
        1, null, new DateOnly(2026, 3, 2), "ED, lead", new SummaryCar("Blue", "Brennock 220", ""), new SummaryShop("Ninth Bay", "01632 960100", true),
        null, new LogbookMark(1, "a3f1"), [], [], [], [], [], [], [], new EvidenceCounts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0), [], [], [], []);

    private readonly CarAtWork car = new();

    [Fact]
    public void The_same_page_has_no_changes() => Assert.Empty(SummaryChanges.Between(Plain, Plain with { Version = 2, Replaces = 1 }));

    [Fact]
    public void What_is_new_and_what_went_away_is_said_by_part()
    {
        var before = Plain with
        {
            Open = [new OpenItem(PositionState.Open, "wheel nut, front-left: 5 of 5 open")],
            Advice = ["Fluid is old: declined.", "Tyres in spring."],
        };
        var now = Plain with
        {
            Duties = ["Call us."],
            Work = [new CoveredWork("Wheel fit-up: front-left", "P5, revision 1", new DateOnly(2026, 3, 2), null, "", [])],
            Parts = [new PartFitted("5 × stud, new", "L1", "wheel stud, front-left")],
            Advice = ["Tyres in spring.", "Pads in autumn."],
        };

        Assert.Equal(
            [
                new(ChangeKind.Gone, ChangePart.Open, "wheel nut, front-left: 5 of 5 open"),
                new(ChangeKind.New, ChangePart.Duty, "Call us."),
                new(ChangeKind.New, ChangePart.Work, "Wheel fit-up: front-left"),
                new(ChangeKind.New, ChangePart.Fitted, "5 × stud, new: wheel stud, front-left"),
                new(ChangeKind.New, ChangePart.Advice, "Pads in autumn."),
                new(ChangeKind.Gone, ChangePart.Advice, "Fluid is old: declined."),
            ],
            SummaryChanges.Between(before, now));
    }

    [Fact]
    public void A_release_a_joint_and_a_result_stand_now_or_stand_no_longer()
    {
        var after = Plain with
        {
            Releases = [new ReleaseLine(true, "Released to road."), new ReleaseLine(false, "Not released to track.")],
            Done = [new SystemWork("wheels", ["wheel nut, front-left: tightened to torque (5 fasteners)"])],
            Results = [new ShownResult("toe", "0.1°", "measured")],
        };
        (ChangePart, string)[] lines =
        [
            (ChangePart.Release, "Released to road."),
            (ChangePart.Tightened, "wheel nut, front-left: tightened to torque (5 fasteners)"),
            (ChangePart.Result, "toe: 0.1°"),
        ];

        Assert.Equal(lines.Select(line => new SummaryChange(ChangeKind.StandsNow, line.Item1, line.Item2)), SummaryChanges.Between(Plain, after));
        Assert.Equal(lines.Select(line => new SummaryChange(ChangeKind.StandsNoLonger, line.Item1, line.Item2)), SummaryChanges.Between(after, Plain));
    }

    [Fact]
    public void A_finding_that_was_decided_since_is_new_as_decided_and_gone_as_undecided()
    {
        var before = Plain with { Found = [new Finding("wheel nut, front-left, no. 4: tightened over the permitted maximum", "not decided yet: it is held", false)] };
        var now = Plain with { Found = [before.Found[0] with { Decision = "redone, now at torque" }] };

        Assert.Equal(
            [
                new(ChangeKind.New, ChangePart.Finding, "wheel nut, front-left, no. 4: tightened over the permitted maximum: redone, now at torque"),
                new(ChangeKind.Gone, ChangePart.Finding, "wheel nut, front-left, no. 4: tightened over the permitted maximum: not decided yet: it is held"),
            ],
            SummaryChanges.Between(before, now));
    }

    [Fact]
    public void Work_on_a_car_shows_as_what_stands_now_and_its_opening_as_what_stands_no_longer()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        var bare = car.Page();
        car.TightenWheel(TestPerson.Tess, job, TestRegister.Left);
        var tight = car.Page();
        Assert.Contains(SummaryChanges.Between(bare, tight), change => change is { Kind: ChangeKind.StandsNow, Part: ChangePart.Tightened });

        car.Open(TestPerson.Tess, null, car.Positions(TestRegister.Nut, TestRegister.Left));

        var changes = SummaryChanges.Between(tight, car.Page());
        Assert.Contains(changes, change => change is { Kind: ChangeKind.StandsNoLonger, Part: ChangePart.Tightened });
        Assert.Contains(changes, change => change is { Kind: ChangeKind.New, Part: ChangePart.Open });
        Assert.DoesNotContain(changes, change => change is { Kind: ChangeKind.StandsNow });
    }

    [Fact]
    public void Every_kind_and_part_has_words()
    {
        Assert.All(Enum.GetValues<ChangeKind>(), kind => Assert.NotEmpty(ChangeWords.Of(kind)));
        Assert.All(Enum.GetValues<ChangePart>(), part => Assert.NotEmpty(ChangeWords.Of(part)));
    }
}
