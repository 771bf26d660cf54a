using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>Little procedures on the test register. Figures are invented.</summary>
internal static class TestProcedures
{
    private static readonly Provenance Source = new("Test instruction", "1", "p. 1", ProvenanceBasis.Stated);
    private static readonly IReadOnlyList<string> Corners = [TestRegister.Left, TestRegister.Right];

    /// <summary>Wheel fit-up: hand, 50 in star with the wheel up, 110 in star on the ground, witness, re-torque after the drive.</summary>
    public static Procedure Wheels(params int[] star) => new(
        "P5", "Fit the wheels", "1", true, [],
        [
            Group("nuts", TestRegister.Nut) with
            {
                Stages =
                [
                    Stage(1, 50, 40, 60, star) with { Conditions = [TestRegister.WheelUp] },
                    Stage(2, 110, 105, 115, star) with { Conditions = [TestRegister.WheelDown], Witness = true },
                ],
                ReTorque = new ReTorque(false, 50, 100, 14),
            },
        ],
        [
            Step("faces", waitsFor: []) with { Ticks = [new("clean", "Faces and cones bare and dry")] },
            Step("seat", "faces") with { Work = [new StepWork("nuts", [1])] },
            Step("final", "seat") with { Work = [new StepWork("nuts", [2])] },
        ]);

    /// <summary>Stud conversion: a temporary jam pair drives each new stud; the locker cures before the step after it.</summary>
    public static Procedure Studs(params int[] star) => new(
        "P3", "Fit wheel studs", "1", true, [],
        [
            Group("jam", TestRegister.Jam) with { Temporary = true, Redo = RedoScope.Position, Risk = RiskClass.C, Stages = [Stage(1, 90, 85, 95, star)] },
            Group("studs", TestRegister.Stud) with
            {
                Condition = ThreadCondition.PreAppliedLocker,
                Hardware = new Hardware("stud M12x1.5", HardwareReuse.SingleUse),
                Jam = new JamPair(NewtonMetres(90), "jam", 4),
                Redo = RedoScope.Position,
                Stages = [Stage(1, 73, 60, 95, star)],
            },
        ],
        [
            Step("drive", waitsFor: []) with
            {
                Work = [new StepWork("jam", [1]), new StepWork("studs", [1])],
                Interleaved = true,
            },
            Step("wheel", waitsFor: [new WaitsFor.ForGroup("studs", 1), new WaitsFor.ForCure("studs", 24)]) with
            {
                Measures = [new("protrusion", "Protrusion", "mm", 30, 31)],
            },
        ]);

    /// <summary>Strut out and in, then the alignment.</summary>
    public static Procedure Strut() => new(
        "P2", "Change the strut", "1", true, [],
        [
            Group("tops", TestRegister.StrutTop) with { Stages = [Stage(1, 45, 40, 50, [1, 2, 1])], Risk = RiskClass.B, IfShort = IfShort.Continue },
            Group("clamp", TestRegister.StrutClamp) with { Stages = [Stage(1, 80, 75, 85, [1])], IfShort = IfShort.Replace },
        ],
        [
            Step("out", waitsFor: []) with { Opens = [TestRegister.StrutClamp, TestRegister.StrutTop] },
            Step("in", "out") with { Work = [new StepWork("tops", [1]), new StepWork("clamp", [1])] },
            Step("align", "in") with { Per = StepPer.Car, Places = [], Records = ["alignment"] },
        ]);

    /// <summary>One single-use bolt pulled with a wrench that shows its reading, then a bleed and a look.</summary>
    public static Procedure Brake() => new(
        "P4", "Fit the brake carrier", "1", true, [],
        [
            Group("carrier", TestRegister.BrakeBolt) with
            {
                Risk = RiskClass.B,
                Hardware = new Hardware("carrier bolt", HardwareReuse.SingleUse),
                Stages = [Stage(1, 80, 75, 85, [1]) with { Evidence = Evidence.Reading }],
            },
        ],
        [
            Step("carrier", waitsFor: []) with { Places = [TestRegister.Front], Work = [new StepWork("carrier", [1])] },
            Step("bed-in", waitsFor: [new WaitsFor.ForStep("carrier"), new WaitsFor.ForResult("bleed")]) with
            {
                Per = StepPer.Car,
                Places = [],
                Ticks = [new("pedal", "Pedal firm")],
            },
        ]);

    /// <summary>
    /// Head bolts, used once: snug at 40, then twice a turn by an angle with the second person after each. They stand on the strut's
    /// top nuts, which the test register has two of.
    /// </summary>
    public static Procedure Head(decimal turn = 90) => new(
        "P6", "Fit the head", "1", true, [],
        [
            Group("bolts", TestRegister.StrutTop) with
            {
                Hardware = new Hardware("head bolt M11", HardwareReuse.SingleUse),
                ReTorque = new ReTorque(true, null, null, null),
                Stages =
                [
                    Stage(1, 40, 38, 42, [1, 2]),
                    Stage(2, 40, 38, 42, [1, 2]) with { Turn = new Turn(turn, turn - 5, turn + 5), Evidence = Evidence.Reading, Witness = true },
                    Stage(3, 40, 38, 42, [2, 1]) with { Turn = new Turn(turn, turn - 5, turn + 5), Evidence = Evidence.Reading, Witness = true },
                ],
            },
        ],
        [
            Step("snug", waitsFor: []) with { Work = [new StepWork("bolts", [1])] },
            Step("turn", "snug") with { Work = [new StepWork("bolts", [2])] },
            Step("turn-again", "turn") with { Work = [new StepWork("bolts", [3])] },
        ]);

    /// <summary>Bar link run down by hand in one step and torqued in the next.</summary>
    public static Procedure Link() => new(
        "P6", "Fit the bar link", "1", true, [],
        [Group("link", TestRegister.BarLink) with { Stages = [Stage(1, 60, 55, 65, [1])], Risk = RiskClass.B }],
        [
            Step("by-hand", waitsFor: []) with { Places = [TestRegister.Front], Work = [new StepWork("link", [])] },
            Step("torque", "by-hand") with { Places = [TestRegister.Front], Work = [new StepWork("link", [1])] },
        ]);

    /// <summary>The strut with its clamp pulled through a crowfoot of 20 mm on a wrench of 300 mm.</summary>
    public static Procedure StrutWithCrowfoot()
    {
        var strut = Strut();
        return strut with { Groups = [strut.Groups[0], strut.Groups[1] with { Adapter = Crowfoot(300, 20) }] };
    }

    /// <summary>The bar link with a self-locking nut: its run-down torque is added, in two stages, and it is re-torqued.</summary>
    public static Procedure LinkWithRunDown()
    {
        var link = Link();
        return link with
        {
            Groups =
            [
                link.Groups[0] with
                {
                    RunDown = RunDown.Add,
                    RunDownPermitted = new TorqueRange(NewtonMetres(2), NewtonMetres(10)),
                    IfShort = IfShort.Continue,
                    ReTorque = new ReTorque(false, 50, 100, 14),
                    Stages = [Stage(1, 42, 41, 50, [1]), Stage(2, 60, 55, 65, [1])],
                },
            ],
            Steps = [link.Steps[0], link.Steps[1] with { Work = [new StepWork("link", [1, 2])] }],
        };
    }

    public static Adapter Crowfoot(double wrench, double length, double angle = 0) => new(
        "crowfoot", new AdapterSetting(Length.FromMillimeters(wrench), Length.FromMillimeters(length), Angle.FromDegrees(angle)), Source);

    /// <summary>The same wheel nuts for another wheel: tighter, and with another nut.</summary>
    public static Procedure OtherWheels(params int[] star)
    {
        var wheels = Wheels(star);
        var group = wheels.Groups[0];
        return wheels with
        {
            Code = "P9",
            Groups =
            [
                group with
                {
                    Stages = [group.Stages[0], group.Stages[1] with { Value = NewtonMetres(114), Permitted = new TorqueRange(NewtonMetres(112), NewtonMetres(120)) }],
                    ReTorque = null,
                },
            ],
        };
    }

    public static JointGroup Group(string id, string key) => new(
        id, id, key, ThreadSize.Parse("M12x1.5"), null, null, null, ThreadCondition.Dry, RiskClass.A,
        new Hardware("nut M12x1.5", HardwareReuse.Allowed), null, RunDown.NotStated, null, IfShort.BackOff, RedoScope.Joint, false, [], Source);

    public static Stage Stage(int number, decimal value, decimal minimum, decimal maximum, IReadOnlyList<int> visits) => new(
        number, NewtonMetres(value), new TorqueRange(NewtonMetres(minimum), NewtonMetres(maximum)), [], Evidence.SettingOrReading, false, visits, Source);

    public static Step Step(string id, string before) => Step(id, [new WaitsFor.ForStep(before)]);

    public static Step Step(string id, IReadOnlyList<WaitsFor> waitsFor) =>
        new(id, id, StepPer.Place, Corners, [], [], [], [], [], [], false, [], waitsFor);

    public static EnteredTorque NewtonMetres(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
