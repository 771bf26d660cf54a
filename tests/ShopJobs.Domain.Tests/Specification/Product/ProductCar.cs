using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>
/// The product under a specification: one real car with one nut a wheel, decided and folded by the real rules. Ann, Bob and Cy
/// have every right; Zoe does what no specification asks about.
/// </summary>
internal abstract class ProductCar
{
    protected const string Place = TestRegister.Left;
    protected static readonly JointPosition Nut = new(TestRegister.Nut, TestRegister.Left, 1);
    protected static readonly TestPerson Zoe = Named("Zoe", 20);
    private static readonly TestPerson Ann = Named("Ann", 21);
    private static readonly TestPerson Bob = Named("Bob", 22);
    private static readonly TestPerson Cy = Named("Cy", 23);

    protected ProductCar(JointRegister? register = null, HoldRules? rules = null) => Car = new CarAtWork(register: register ?? Register(), rules: rules);

    protected CarAtWork Car { get; private set; }

    protected JobId Job { get; set; }

    /// <summary>The procedure that its wheel is fitted by.</summary>
    protected virtual Procedure FittedBy => TestProcedures.Wheels(1);

    protected PositionBook Book => Car.State.Of(Nut);

    protected bool JobRuns => Car.State.Jobs[Job].IsRunning;

    protected static TestPerson Who(People person) => person switch
    {
        People.Ann => Ann,
        People.Bob => Bob,
        People.Cy => Cy,
        _ => Zoe,
    };

    protected bool Try(TestPerson person, Command command) => Car.Try(person, command) is Verdict.Accepted;

    /// <summary>One pull read on the dial wrench.</summary>
    protected TorqueRecorded Pull(TestPerson person, string group, JointPosition position, int stage, decimal newtonMetres, params PersonId[] helpers) =>
        Car.Pull(person, Job, group, position, stage, newtonMetres, TestTools.Dial, 0, helpers);

    /// <summary>Fits the wheel with its one nut, checked by a second person and signed; under a new job where the last one has ended.</summary>
    protected void Close()
    {
        if (!JobRuns)
        {
            Job = Car.StartJob(FittedBy, Place);
        }

        SignWhereAsked(Zoe, $"faces@{Place}", "clean");
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, Job, "nuts", Nut);
        Pull(Zoe, "nuts", Nut, 1, 50);
        SignWhereAsked(Zoe, $"seat@{Place}");
        Car.Declare(TestRegister.WheelDown);
        Pull(Zoe, "nuts", Nut, 2, 110);
        Car.Do(Who(People.Cy), CarWork.Looks(Job, "nuts", Place, 2));
        SignWhereAsked(Zoe, $"final@{Place}");
    }

    /// <summary>Signs a step where its sign-off does not stand.</summary>
    protected void SignWhereAsked(TestPerson person, string step, params string[] ticks)
    {
        if (Car.Standing(Job, step) != StepStanding.Signed)
        {
            Car.Do(person, CarWork.Sign(Job, step, ticks));
        }
    }

    /// <summary>Who signed as witness for the pull that counts now.</summary>
    protected PersonId? WitnessOf(JointPosition position) =>
        Car.State.Of(position).Last?.WitnessedBy is { } number ? Car.Book[(int)number - 1].Person : null;

    protected bool IsHeld(JointPosition position) => Car.State.Of(position).Holds.Exists(hold => hold.Decision is null);

    /// <summary>The same car, on which something else may happen from here.</summary>
    public static T Copy<T>(T car)
        where T : ProductCar
    {
        var copy = (T)car.MemberwiseClone();
        copy.Car = car.Car.Copy();
        return copy;
    }

    protected static string? Differ(params (string What, object? Model, object? Product)[] answers)
    {
        var found = answers.Where(answer => !Equals(answer.Model, answer.Product))
            .Select(answer => $"{answer.What}: the rules say {answer.Model}, the product says {answer.Product}").ToList();
        return found.Count == 0 ? null : string.Join("; ", found);
    }

    protected static JointRegister Register()
    {
        var register = TestRegister.With(1);
        return register with { Kinds = register.Kinds.Where(kind => kind.Key != TestRegister.BrakeBolt).ToDictionary() };
    }

    private static TestPerson Named(string name, int number) =>
        new(name, new PersonId(new Guid(number, 0, 0, new byte[8])), RightSets.OfTheLead.ToHashSet());
}
