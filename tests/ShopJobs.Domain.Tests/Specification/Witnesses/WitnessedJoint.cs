using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Witnesses;

/// <summary>How far the joint is: opened, its earlier stage or its jam pair done, its final stage done.</summary>
internal enum Done
{
    Opened,
    Earlier,
    Final,
}

/// <summary>Who reports a stage, and who helped.</summary>
internal readonly record struct Report(People By, People Helper)
{
    public static readonly Report[] All =
    [
        .. from doer in Persons.Each from helper in Persons.Each.Prepend(People.Nobody) where doer != helper select new Report(doer, helper),
    ];

    public override string ToString() => Helper == People.Nobody ? $"{By}" : $"{By}, {Helper} helps";
}

/// <summary>One group instance whose final stage asks for a second person.</summary>
/// <param name="Worked">The fact: who recorded, held, helped on or corrected any stage since it was last opened.</param>
/// <param name="Known">Whom the book takes for those.</param>
/// <param name="Witness">Whose witness stands.</param>
/// <param name="ReTorquedBy">Who re-torqued it after the drive.</param>
/// <param name="By">Who did the last thing.</param>
/// <param name="Helper">Who helped with it.</param>
/// <param name="Granted">He asked to witness and was let.</param>
internal readonly record struct WitnessedJoint(
    Done Done, People Worked, People Known, People Witness, bool Held, People ReTorquedBy, People By, People Helper, bool Granted)
{
    public bool MayWitness(People person) => !Known.Has(person);

    public WitnessedJoint Record(Report report) => WorkBy(report.By | report.Helper) with
    {
        Done = Done + 1,
        By = report.By,
        Helper = report.Helper,
    };

    public WitnessedJoint Hold(People person) => WorkBy(person) with { Held = true };

    public WitnessedJoint UseAsIs(People person) => Said(person) with { Held = false };

    public WitnessedJoint Correct(People person) => WorkBy(person) with { Witness = People.Nobody };

    public WitnessedJoint ReTorque(People person) => Said(person) with { ReTorquedBy = person };

    public static WitnessedJoint OpenedBy(People person) => new() { By = person };

    public WitnessedJoint Ask(People person) => MayWitness(person)
        ? Said(person) with { Witness = person, Granted = true }
        : Said(person);

    private WitnessedJoint WorkBy(People people) => Said(people) with
    {
        Worked = Worked | people,
        Known = Known | people,
        Witness = (Witness & people) == 0 ? Witness : People.Nobody,
    };

    private WitnessedJoint Said(People person) => this with { By = person, Helper = People.Nobody, Granted = false };
}
