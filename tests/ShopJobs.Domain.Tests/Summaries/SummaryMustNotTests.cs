using System.Text.RegularExpressions;
using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed partial class SummaryMustNotTests
{
    private const int Star = 5;

    [Fact]
    public void Holds_no_name_no_time_of_day_no_tool_no_id_and_no_promise()
    {
        var car = new CarAtWork();
        var job = car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        car.Do(TestPerson.Tess, new HoldPositions([new(TestRegister.BarLink, TestRegister.Front, 1)], CarAtWork.Reason));

        var text = car.Page().Text();

        Assert.All(TestPerson.All, person => Assert.DoesNotContain(person.Name, text, StringComparison.Ordinal));
        Assert.DoesNotContain("NB-W7", text, StringComparison.Ordinal);
        Assert.DoesNotContain("W7", text, StringComparison.Ordinal);
        Assert.DoesNotContain(job.Value.ToString("N"), text.Replace("-", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain(CarAtWork.Reason.Hex, text, StringComparison.Ordinal);
        Assert.DoesNotMatch(TimeOfDay(), text);
        foreach (var never in (string[])["guaranteed", "cannot fail", "can't fail", "safe to", "%", "price", "€", "$"])
        {
            Assert.DoesNotContain(never, text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void A_locker_joint_is_shown_without_a_figure()
    {
        var car = new CarAtWork();
        var job = car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5), TestRegister.Left);
        foreach (var stud in car.Positions(TestRegister.Stud, TestRegister.Left))
        {
            car.DriveStud(job, stud);
        }

        var page = car.Page();

        var joint = Assert.Single(page.ClassA);
        Assert.Equal(("wheel stud, front-left", null), (joint.Joint, joint.Torque));
        Assert.DoesNotContain("73", page.Text(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ThreadCondition.Dry, true)]
    [InlineData(ThreadCondition.Locker, false)]
    public void A_joint_that_must_never_be_re_torqued_is_shown_without_a_figure(ThreadCondition condition, bool forbidden)
    {
        var car = new CarAtWork();
        var wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);
        var job = car.StartJob(
            wheels with { Groups = [wheels.Groups[0] with { Condition = condition, ReTorque = forbidden ? new ReTorque(true, null, null, null) : null }] },
            TestRegister.Left);
        car.UpToFinal(job);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 2);

        var page = car.Page();

        Assert.Null(Assert.Single(page.ClassA).Torque);
        Assert.Equal(forbidden ? "never" : "not asked", page.ClassA[0].ReTorque);
        Assert.DoesNotContain("110", page.Text().Replace("01632 960100", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    /// <summary>The shop brief, section 5: no figure that invites the owner to pull a joint again that was turned by an angle.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_joint_that_was_turned_by_an_angle_is_shown_without_a_figure(bool forbidden)
    {
        var car = new CarAtWork();
        var head = TestProcedures.Head();
        var job = car.StartJob(
            head with { Groups = [head.Groups[0] with { ReTorque = forbidden ? head.Groups[0].ReTorque : null }] }, TestRegister.Left);
        var bolts = car.Positions(TestRegister.StrutTop, TestRegister.Left);
        car.Open(TestPerson.Tess, job, bolts);
        car.FitNew(TestPerson.Tess, job, "bolts", bolts);
        car.ByHand(TestPerson.Tess, job, "bolts", bolts);
        foreach (var (step, stage) in new[] { ("snug", 1), ("turn", 2), ("turn-again", 3) })
        {
            foreach (var bolt in stage == 3 ? bolts.Reverse() : bolts)
            {
                Assert.Empty(stage == 1
                    ? car.Pull(TestPerson.Tess, job, "bolts", bolt, 1, 41, TestTools.Dial).Problems
                    : car.Turn(TestPerson.Tess, job, "bolts", bolt, stage, 93).Problems);
            }

            if (stage > 1)
            {
                car.Do(TestPerson.Theo, CarWork.Looks(job, "bolts", TestRegister.Left, stage));
            }

            car.Do(TestPerson.Tess, CarWork.Sign(job, $"{step}@{TestRegister.Left}"));
        }

        var page = car.Page();

        var joint = Assert.Single(page.ClassA);
        Assert.Equal((null, "angle measured", "yes", "never"), (joint.Torque, joint.Evidence, joint.Witness, joint.ReTorque));
        var text = page.Text().Replace("01632 960100", "", StringComparison.Ordinal);
        Assert.All((string[])["N·m", "41", "93", "°"], figure => Assert.DoesNotContain(figure, text, StringComparison.Ordinal));
        Assert.DoesNotContain(page.Duties, duty => duty.Contains("re-torque", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Any run of pulls, voids, confirmations, openings and holds: a figure on the page is the value of a pull that passes now.</summary>
    [Fact]
    public void No_voided_and_no_opened_pull_is_shown_and_nothing_unfinished_is_left_out() =>
        Gen.Int[0, 9].Array[10, 60].Sample(
            acts =>
            {
                var car = new CarAtWork();
                var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
                car.UpToFinal(job);
                var issued = false;
                for (var at = 0; at < acts.Length; at++)
                {
                    Act(car, job, acts[at], at);
                    if (at == acts.Length / 2)
                    {
                        car.Issue();
                        issued = true;
                    }
                }

                return issued && ShowsOnlyWhatPasses(car) && ShowsWhatHoldsTheRelease(car) && SupersededIsNeverCurrent(car);
            },
            iter: 60);

    private static void Act(CarAtWork car, JobId job, int act, int at)
    {
        var nut = new JointPosition(TestRegister.Nut, TestRegister.Left, (at % Star) + 1);
        var pulls = car.Book.Where(entry => entry.Entry is TorqueRecorded).ToList();
        switch (act)
        {
            case 0 or 1 or 2 or 3:
                car.Pull(TestPerson.Tess, job, "nuts", nut, 2, 105 + (at * 0.11m) + 0.007m, TestTools.Dial);
                break;
            case 4:
                car.Try(TestPerson.Tess, new VoidEntry(pulls[^1].Number, null, CarAtWork.Reason));
                break;
            case 5:
                car.Try(TestPerson.Tess, new VoidEntry(pulls[at % pulls.Count].Number, null, CarAtWork.Reason));
                break;
            case 6:
                car.Try(TestPerson.Lee, new ConfirmCorrection(car.State.Corrections.Keys.DefaultIfEmpty(1).Max(), CarAtWork.Reason, CarAtWork.Shown));
                break;
            case 7:
                car.Try(TestPerson.Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
                break;
            case 8:
                car.Try(TestPerson.Lee, CarWork.Decision(nut, Disposition.UseAsIs, accepted: true));
                break;
            default:
                car.Open(TestPerson.Tess, job, nut);
                car.ByHand(TestPerson.Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left));
                break;
        }
    }

    private static bool ShowsOnlyWhatPasses(CarAtWork car)
    {
        var text = car.Page().Text();
        var current = car.State.Positions.Values.SelectMany(book => book.Pulls).Where(car.State.Passes).Select(pull => pull.Number).ToHashSet();
        return car.Book.Where(entry => entry.Entry is TorqueRecorded { Stage: 2 } && !current.Contains(entry.Number))
            .All(entry => !text.Contains(((TorqueRecorded)entry.Entry).Amount(), StringComparison.Ordinal));
    }

    private static bool ShowsWhatHoldsTheRelease(CarAtWork car) =>
        HoldRules.Standard.OnRelease(car.State, car.As(TestPerson.Lee), ReleaseKind.Road, false)
            .All(point => point.Reason == HoldReason.JointNotMadeHere) || car.Page().Open.Count > 0;

    private static bool SupersededIsNeverCurrent(CarAtWork car) =>
        car.State.Summaries[^1].SupersededBy == 0 || car.Standing() is not SummaryStanding.Current;

    [GeneratedRegex(@"\d\d:\d\d")]
    private static partial Regex TimeOfDay();
}
