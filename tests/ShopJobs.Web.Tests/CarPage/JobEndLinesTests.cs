using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.JobEnds;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Tests.CarPage;

/// <summary>What ending, resting and giving up a job means is said before it is signed.</summary>
public sealed class JobEndLinesTests : ScreenBench
{
    private readonly CarAtWork car = Readings.WithStoppedNut();

    private JobBook Job => car.State.Jobs.Values.Single();

    [Fact]
    public void A_job_is_not_ended_while_steps_are_not_signed_and_says_which() =>
        Assert.Equal(["“seat, front-left” is not signed", "“final, front-left” is not signed"], Lines().Against(JobAct.End).Select(point => car.Say(point).Words));

    [Fact]
    public void What_has_to_be_run_down_again_is_named_before_it_rests_and_before_it_goes_on()
    {
        const string Again = "these are run down again, backed off first where they were pulled: wheel nut front-left 1 to 5.";
        Assert.Contains($"When it is resumed {Again}", Lines().Of(JobAct.Hold));
        car.Do(TestPerson.Lee, new PutJobOnHold(Job.Id, CarAtWork.Reason));
        Assert.Contains($"From here {Again}", Lines().Of(JobAct.Resume));
        Assert.Equal("It was on hold since 07:07, by Lee, because “parts are late”.", Lines().Of(JobAct.Resume)[0]);
    }

    [Fact]
    public void A_cancelled_job_says_what_stays_open_and_how_many_steps_fall()
    {
        car.Open(TestPerson.Tess, Job.Id, car.Positions(TestRegister.StrutTop, TestRegister.Left));
        var lines = Lines().Of(JobAct.Cancel);
        Assert.Equal("2 steps without a signature fall: they need not be done.", lines[0]);
        Assert.StartsWith("Not closed: it stays as it is, and holds the releases until another job closes it: ", lines[1], StringComparison.Ordinal);
        Assert.Contains("strut top nut front-left 1, 2", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_on_the_wrong_car_names_what_it_opened()
    {
        var lines = Lines().Of(JobAct.WrongCar);
        Assert.Equal("It opened, and nobody has closed: wheel nut front-left 1 to 5.", lines[1]);
    }

    private JobEndLines Lines() => new(
        Readings.Of(car, TestPerson.Lee), Job, Readings.Names,
        new JobStateWords(Services.GetRequiredService<ShopClock>(), Readings.Names, new Dictionary<ContentDigest, string> { [CarAtWork.Reason] = "parts are late" }));
}
