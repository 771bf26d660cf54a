using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Reference.Statements;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Whole joints: torque and load, loosening, angle, settling, nut pairs and wheel studs.</summary>
internal static class JointChecks
{
    public static void TorqueFromFriction(ReferenceRow row)
    {
        var threads = double.Parse(Regex.Match(row["inputs"], @"(?<n>\d+) tpi").Groups["n"].Value, CultureInfo.InvariantCulture);
        var root = Length.FromMillimeters(2 * Math.Sqrt(RowQuantity.Area(row, "inputs", "Ar").SquareMillimeters / Math.PI));
        var friction = row.Named("inputs", "fc");
        var torque = ScrewTorque.For(
            RowQuantity.Force(row, "inputs", "F", "kip"), RowQuantity.Length(row, "inputs", "d"), Length.FromInches(1 / threads), root, friction, friction);
        WorkedExampleChecks.List(row, "published", torque.PoundForceInches);
    }

    /// <summary>Bolt stress, preload stress, then the factors np, nL, n0.</summary>
    public static void Factors(ReferenceRow row)
    {
        var area = RowQuantity.Area(row, "inputs", "At");
        var proof = Force.FromNewtons(area.SquareMillimeters * RowQuantity.Pressure(row, "inputs", "Sp").Megapascals);
        var joint = new WorkingLoad(
            RowQuantity.Force(row, "inputs", "Fi", "kip"), RowQuantity.Force(row, "inputs", "P", "kip"), row.Named("inputs", "C"));
        WorkedExampleChecks.List(
            row, "published", Ksi(joint.InBolt), Ksi(joint.Preload), joint.YieldFactor(proof), joint.LoadFactor(proof), joint.SeparationFactor);

        double Ksi(Force force) => force.PoundsForce / 1000 / area.SquareInches;
    }

    public static void Loosening(ReferenceRow row)
    {
        var thread = RowQuantity.Thread(row, "inputs");
        var joint = new JointGeometry(thread.Pitch.Millimeters, thread.PitchDiameter.Millimeters, RowQuantity.Length(row, "inputs", "Dkm").Millimeters / 2);
        var force = RowQuantity.Force(row, "inputs", "F", "kN");
        var friction = row.Named("inputs", "face");
        var (tighten, loosen) = (ClampLoad.ToTorque(joint, force, friction, friction), ClampLoad.LooseningTorque(joint, force, friction, friction));
        WorkedExampleChecks.Named(row, "tighten", tighten.NewtonMeters);
        WorkedExampleChecks.Named(row, "loosen", loosen.NewtonMeters);
        WorkedExampleChecks.Named(row, "ratio", loosen / tighten);
    }

    public static void AngleTightening(ReferenceRow row) => WorkedExampleChecks.Named(row, "dF", TorqueAngle.Gain(
        RowQuantity.Thread(row, "inputs"), Angle.FromDegrees(row.Named("inputs", "angle")), Given(row)).Kilonewtons);

    public static void EmbeddingLoss(ReferenceRow row) =>
        WorkedExampleChecks.Named(row, "FZ", Embedding.Loss(RowQuantity.Length(row, "inputs", "fz"), Given(row)).Kilonewtons);

    public static void JamNuts(ReferenceRow row)
    {
        var thread = RowQuantity.Thread(row, "inputs");
        var face = RowQuantity.Length(row, "inputs", "Dm");
        var jam = RowQuantity.Torque(row, "inputs", "T_jam");
        var friction = row.Named("inputs", "face");
        WorkedExampleChecks.Named(row, "F_jam", NutPair.JamLoad(thread, face, jam, friction).Kilonewtons);
        WorkedExampleChecks.Named(row, "T_pair", NutPair.CreepTorque(thread, face, jam, friction).NewtonMeters);
        WorkedExampleChecks.Named(row, "T_drive_max", NutPair.GreatestDrive(thread, face, jam, friction).NewtonMeters);
        WorkedExampleChecks.Named(row, "T_break", NutPair.WrongNutBreak(thread, face, jam, friction).NewtonMeters);
    }

    /// <summary>The rows give a pitch and no size; the diameter does not enter what they check.</summary>
    public static void WheelStud(ReferenceRow row)
    {
        var pitch = row.Listed("inputs", "pitch");
        var stack = new WheelStudStack
        {
            Thread = ThreadSize.Parse(pitch == 1.27 ? "1/2-20" : string.Create(CultureInfo.InvariantCulture, $"M14x{pitch}")),
            Stud = Mm("stud"),
            HubFlange = Mm("hub flange"),
            DiscHat = Mm("rotor hat"),
            Spacer = Mm("spacer"),
            WheelPad = Mm("wheel pad"),
            NutThread = Mm("nut thread"),
        };
        WorkedExampleChecks.Named(row, "available", stack.Available.Millimeters);
        WorkedExampleChecks.Named(row, "engaged", stack.Engaged.Millimeters);
        WorkedExampleChecks.Named(row, "turns", stack.Turns);

        Length Mm(string name) => Length.FromMillimeters(row.Listed("inputs", name));
    }

    private static Resilience Given(ReferenceRow row) => new(row.Named("inputs", "deltaS"), row.Named("inputs", "deltaP"));
}
