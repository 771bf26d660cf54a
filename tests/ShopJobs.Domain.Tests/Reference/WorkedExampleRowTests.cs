using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference;

public class WorkedExampleRowTests
{
    public static TheoryData<string> JamNuts => FastenerRows.Of(FastenerRows.JamNuts);

    public static TheoryData<string> Loosening => FastenerRows.Of(FastenerRows.Loosening);

    public static TheoryData<string> NutFactors => FastenerRows.Of(FastenerRows.NutFactors);

    [Theory]
    [MemberData(nameof(JamNuts))]
    public void Nut_pair_creeps_where_its_statics_say(string id)
    {
        var row = FastenerRows.Row(id);
        var thread = ThreadOf(row);
        var face = Length.FromMillimeters(row.Named("inputs", "Dm"));
        var jam = Torque.FromNewtonMeters(row.Named("inputs", "T_jam"));
        var friction = row.Named("inputs", "face");
        var tolerance = row.Number("rel_tol");

        Near("F_jam", NutPair.JamLoad(thread, face, jam, friction).Kilonewtons);
        Near("T_pair", NutPair.CreepTorque(thread, face, jam, friction).NewtonMeters);
        Near("T_drive_max", NutPair.GreatestDrive(thread, face, jam, friction).NewtonMeters);
        Near("T_break", NutPair.WrongNutBreak(thread, face, jam, friction).NewtonMeters);

        void Near(string name, double computed)
        {
            var printed = row.Named("computed", name);
            row.Near(name, printed, computed, printed * tolerance);
        }
    }

    [Theory]
    [MemberData(nameof(Loosening))]
    public void Joint_loosens_at_the_printed_torque(string id)
    {
        var row = FastenerRows.Row(id);
        var thread = ThreadOf(row);
        var joint = new JointGeometry(thread.Pitch.Millimeters, thread.PitchDiameter.Millimeters, row.Named("inputs", "Dkm") / 2);
        var force = Force.FromKilonewtons(row.Named("inputs", "F"));
        var friction = row.Named("inputs", "face");
        var (tighten, loosen) = (row.Named("computed", "tighten"), row.Named("computed", "loosen"));

        row.Near("tighten", tighten, ClampLoad.ToTorque(joint, force, friction, friction).NewtonMeters, tighten * row.Number("rel_tol"));
        row.Near("loosen", loosen, ClampLoad.LooseningTorque(joint, force, friction, friction).NewtonMeters, loosen * row.Number("rel_tol"));
    }

    [Theory]
    [MemberData(nameof(NutFactors))]
    public void Nut_factor_of_a_test(string id)
    {
        var row = FastenerRows.Row(id);
        var preload = Regex.Match(row["inputs"], @"mean preload=(?<f>\d+) lbf").Groups["f"].Value;
        var factor = ClampLoad.NutFactor(
            Torque.FromPoundForceInches(row.Named("inputs", "T")),
            Length.FromInches(row.Named("inputs", "D")),
            Force.FromPoundsForce(double.Parse(preload, CultureInfo.InvariantCulture)));

        row.Near("K", row.Number("published"), factor, row.Number("published") * row.Number("rel_tol"));
    }

    private static ThreadSize ThreadOf(ReferenceRow row) => ThreadSize.Parse(row["inputs"].Split(' ')[0]);
}
