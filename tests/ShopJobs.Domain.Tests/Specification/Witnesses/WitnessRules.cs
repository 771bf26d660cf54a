using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Witnesses;

/// <summary>Who may be the second person: three people at one joint, in any order.</summary>
internal static class WitnessRules
{
    public static RuleBook<WitnessedJoint> Book() =>
        Faults(Courses(Requirements(Actions(new RuleBook<WitnessedJoint>("The second person", default, joint => joint.ToString())))));

    private static RuleBook<WitnessedJoint> Actions(RuleBook<WitnessedJoint> book) => book
        .Action("Record", Report.All, (joint, _) => joint.Done < Done.Final, (joint, report) => joint.Record(report))
        .Action("Hold", Persons.Each, (joint, _) => joint.Done == Done.Final && !joint.Held, (joint, person) => joint.Hold(person))
        .Action("Use as is", Persons.Each, (joint, person) => joint.Held && !joint.Worked.Has(person), (joint, person) => joint.UseAsIs(person))
        .Action("Correct", Persons.Each, (joint, _) => joint.Done == Done.Final && !joint.Held, (joint, person) => joint.Correct(person))
        .Action("Re-torque", Persons.Each, CanReTorque, (joint, person) => joint.ReTorque(person))
        .Action("Open", Persons.Each, (joint, _) => joint.Done > Done.Opened && !joint.Held, (_, person) => WitnessedJoint.OpenedBy(person))
        .Action("Witness", Persons.Each, (joint, _) => joint is { Done: Done.Final, Held: false, Witness: People.Nobody }, (joint, person) => joint.Ask(person))
        .Rests(joint => joint.Held);

    private static bool CanReTorque(WitnessedJoint joint, People person) =>
        joint.Witness != People.Nobody && !joint.Held && joint.ReTorquedBy == People.Nobody;

    private static RuleBook<WitnessedJoint> Requirements(RuleBook<WitnessedJoint> book) => book
        .On("Witness", "4", "WITNESS-IS-ANOTHER",
            "A witness is nobody who recorded, held, helped on or corrected any stage of that group instance (or of the pair that drove it) since it was last opened",
            (_, after) => after.Granted,
            (before, after) => !before.Worked.Has(after.By))
        .On("Witness", "4", "ANYBODY-ELSE-MAY",
            "A re-torque or a looked-at is no stage here",
            (before, after) => !before.Worked.Has(after.By),
            (_, after) => after.Granted)
        .Whenever("4", "WITNESS-STAYS-ANOTHER",
            "before or after witnessing",
            (before, after) => before.Witness != People.Nobody && after.Worked.Has(before.Witness),
            (_, after) => after.Witness == People.Nobody)
        .On("Correct", "8", "CORRECTION-VOIDS-WITNESS",
            "Voiding or restating re-judges every sign-off that rested on the old entry and voids its witness",
            (before, _) => before.Witness != People.Nobody,
            (_, after) => after.Witness == People.Nobody)
        .On("Open", "4", "OPENING-BEGINS-ANEW",
            "since it was last opened",
            (before, _) => before.Worked != People.Nobody,
            (_, after) => after.Known == People.Nobody && after.Witness == People.Nobody);

    private static RuleBook<WitnessedJoint> Courses(RuleBook<WitnessedJoint> book) => book
        .Ends("4", "THIRD-WITNESSES", "Two technicians on one wheel, a third witnesses",
            joint => joint.Worked == (People.Ann | People.Bob) && joint.Witness == People.Cy)
        .Ends("4", "MARCH-WITNESS-RE-TORQUES", "Re-torque by the March witness",
            joint => joint.Witness == People.Cy && joint.ReTorquedBy == People.Cy)
        .Ends("4", "RE-TORQUER-WITNESSES", "Whoever re-torqued may be the second person for a figure corrected since",
            joint => joint.ReTorquedBy == People.Cy && joint.Witness == People.Cy && joint.Worked == (People.Ann | People.Bob));

    private static RuleBook<WitnessedJoint> Faults(RuleBook<WitnessedJoint> book) => book
        .Fault("who jammed the pair, or did the stage before, witnesses", "WITNESS-IS-ANOTHER", "Record",
            (_, after) => after.Done == Done.Earlier, (_, joint) => joint with { Known = People.Nobody })
        .Fault("who helped witnesses", "WITNESS-IS-ANOTHER", "Record",
            (_, after) => after.Helper != People.Nobody, (_, joint) => joint with { Known = joint.Known & ~joint.Helper })
        .Fault("who corrected the figure witnesses it", "WITNESS-IS-ANOTHER", "Correct",
            (before, after) => !before.Worked.Has(after.By), (_, joint) => joint with { Known = joint.Known & ~joint.By })
        .Fault("who pressed HOLD witnesses", "WITNESS-IS-ANOTHER", "Hold",
            (before, after) => !before.Worked.Has(after.By), (_, joint) => joint with { Known = joint.Known & ~joint.By })
        .Fault("a witness who works on the joint afterwards stays its witness", "WITNESS-STAYS-ANOTHER", "Hold",
            (before, after) => before.Witness == after.By, (_, joint) => joint with { Witness = joint.By })
        .Fault("a corrected figure keeps its witness", "CORRECTION-VOIDS-WITNESS", "Correct",
            (before, after) => before.Witness == People.Cy && after.By != People.Cy, (_, joint) => joint with { Witness = People.Cy })
        .Fault("whoever re-torqued is taken for a worker", "ANYBODY-ELSE-MAY", "Re-torque",
            (_, _) => true, (_, joint) => joint with { Known = joint.Known | joint.By })
        .Fault("workers of an earlier cycle are kept", "OPENING-BEGINS-ANEW", "Open",
            (_, _) => true, (_, joint) => joint with { Known = joint.By });
}
