using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Revisions;

namespace ShopJobs.Web.Tests.Procedures;

/// <summary>What a newer revision means for a job, as people read it.</summary>
public class RevisionEffectTests
{
    private const string Place = TestRegister.Left;

    [Fact]
    public void Better_words_leave_every_record_and_signature_alone()
    {
        var (car, job) = Fitted();

        Assert.Equal("10 records the same", Short(car, job, procedure => procedure with { Title = "Said better" }));
    }

    [Fact]
    public void Another_torque_puts_the_final_pulls_outside_and_its_step_to_sign_anew() =>
        Assert.Equal("5 records the same, 5 now outside what it asks, 1 signed step to sign again", Short(Fitted(), Torque(120, 118, 122)));

    [Fact]
    public void A_wider_range_that_holds_the_pulls_costs_a_signature_and_no_record() =>
        Assert.Equal("10 records the same, 1 signed step to sign again", Short(Fitted(), Torque(110, 100, 115)));

    [Fact]
    public void A_witness_that_only_the_newer_revision_asks_for_is_no_look_that_was_given() =>
        Assert.Equal("5 records the same, 5 now outside what it asks, 1 signed step to sign again", Short(Fitted(), procedure => procedure with
        {
            Groups = [procedure.Groups[0] with { Stages = [procedure.Groups[0].Stages[0] with { Witness = true }, procedure.Groups[0].Stages[1]] }],
        }));

    [Fact]
    public void A_step_that_is_gone_is_said()
    {
        var (car, job) = Fitted();
        var effect = Effect(car, job, procedure => procedure with { Groups = [], Steps = [procedure.Steps[0]] });

        Assert.Equal("10 of steps that are gone, 2 signed steps to sign again", RevisionLines.Short(effect));
        Assert.Equal("nuts", Assert.Single(effect.Gone).Name);
    }

    [Fact]
    public void A_job_on_which_nothing_was_done_is_said()
    {
        var car = new CarAtWork();
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Place);

        Assert.Equal("nothing was done under it yet", Short(car, job, Torque(120, 118, 122)));
    }

    private static (CarAtWork Car, JobId Job) Fitted()
    {
        var car = new CarAtWork();
        return (car, car.FitLeftWheel());
    }

    private static Func<Procedure, Procedure> Torque(decimal value, decimal least, decimal most) => procedure => procedure with
    {
        Groups =
        [
            procedure.Groups[0] with
            {
                Stages = [procedure.Groups[0].Stages[0], procedure.Groups[0].Stages[1] with { Value = CarAtWork.NewtonMetres(value), Permitted = new(CarAtWork.NewtonMetres(least), CarAtWork.NewtonMetres(most)) }],
            },
        ],
    };

    private static string Short((CarAtWork Car, JobId Job) made, Func<Procedure, Procedure> revise) => Short(made.Car, made.Job, revise);

    private static string Short(CarAtWork car, JobId job, Func<Procedure, Procedure> revise) => RevisionLines.Short(Effect(car, job, revise));

    private static RevisionEffect Effect(CarAtWork car, JobId job, Func<Procedure, Procedure> revise)
    {
        var before = car.Placed(job);
        return RevisionEffect.Of(car.State, car.As(TestPerson.Lee), car.State.Jobs[job], new PlacedProcedure(revise(before.Procedure), before.Register, [Place]));
    }
}
