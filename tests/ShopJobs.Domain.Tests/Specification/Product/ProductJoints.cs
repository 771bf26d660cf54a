using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>The little procedures that real cars are driven with. Invented.</summary>
internal static class ProductJoints
{
    public static readonly JointPosition Stud = new(TestRegister.Stud, TestRegister.Left, 1);
    public static readonly JointPosition Nut = new(TestRegister.Nut, TestRegister.Left, 1);
    public static readonly JointPosition Jam = new(TestRegister.Jam, TestRegister.Left, 1);

    /// <summary>One single-use stud driven by a temporary pair, and a step that waits for its cure.</summary>
    public static readonly Procedure Studs = new(
        "P3", "Fit a wheel stud", "1", true, [],
        [
            TestProcedures.Group("jam", TestRegister.Jam) with
            {
                Temporary = true, Redo = RedoScope.Position, Risk = RiskClass.C, Stages = [TestProcedures.Stage(1, 90, 85, 95, [1])],
            },
            TestProcedures.Group("studs", TestRegister.Stud) with
            {
                Risk = RiskClass.B,
                Hardware = new Hardware("stud M12x1.5", HardwareReuse.SingleUse),
                Jam = new JamPair(TestProcedures.NewtonMetres(90), "jam", 4),
                Redo = RedoScope.Position,
                Stages = [TestProcedures.Stage(1, 73, 60, 95, [1])],
            },
        ],
        [
            TestProcedures.Step("drive", waitsFor: []) with { Work = [new StepWork("jam", [1]), new StepWork("studs", [1])], Interleaved = true },
            TestProcedures.Step("cure", waitsFor: [new WaitsFor.ForGroup("studs", 1), new WaitsFor.ForCure("studs", 24)]),
        ]);

    /// <summary>The same, the stud to be driven within two hours of hand-tight.</summary>
    public static readonly Procedure StudsInTime = Studs with { Groups = [Studs.Groups[0], Studs.Groups[1] with { Within = TimeSpan.FromHours(2) }] };

    /// <summary>One wheel nut in one stage, class B, to be used again.</summary>
    public static readonly Procedure Wheel = new(
        "P5", "Fit the wheel", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Risk = RiskClass.B, Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] }],
        [TestProcedures.Step("final", waitsFor: []) with { Work = [new StepWork("nuts", [1])] }, TestProcedures.Step("after", "final")]);
}
