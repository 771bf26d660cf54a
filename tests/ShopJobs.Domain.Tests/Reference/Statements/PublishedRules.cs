using System.Globalization;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>
/// Rules of fastening from public documents, aircraft and army manuals above all: orientation for a shop whose own maker's
/// instruction always wins. Figures that something here computes with are taken from there.
/// </summary>
public static class PublishedRules
{
    private const string ArmyBulletin = "US Army TB 43-0218";
    private const string ArmyManual = "US Army TM 5-3805-248-23-1, torque limits";
    private const string Circular = "FAA AC 43.13-1B (9/8/98), ch. 7";

    /// <summary>All rules held here.</summary>
    public static IReadOnlyList<PublishedRule> All { get; } =
    [
        new("engagement", $"nut height or tapped depth at least {WheelStudFit.LeastDiameters} d in steel; 1.5 d in softer metal", $"{ArmyBulletin}, par. 7a"),
        new("engagement", "aluminium at least 2 d, steel and cast iron at least 1.25 d, general note in an engine manual", "engine service manual"),
        new("protrusion", "bolt must stick out of the nut by at least two full threads", $"{ArmyBulletin}, par. 7b"),
        new("protrusion", "verify at least two threads through a self-locking nut", "NASA-STD-5020B (2021-08-06), app. B"),
        new("protrusion", "at least one thread through the nut", Circular),
        new("prevailing torque", "discard a self-locking nut that cannot hold the min prevailing torque of the table rows below", $"{Circular}, table 7-2"),
        new("prevailing torque", "note: fibre or nylon nut may be reused only if it cannot be turned by fingers", "FAA AC 43.13-1A"),
        new("prevailing torque", "do not use self-locking nuts on parts subject to rotation", $"{Circular}, par. 7-64"),
        new("prevailing torque", "friction drag torque of the nut is added to the table torque", $"{Circular}, par. 7-40"),
        new("single-use parts", "cotter pins, lockwashers, locking bolts and nuts and lock wire are discarded on removal", $"{ArmyBulletin}, par. 5"),
        new("single-use parts", "cotter pins and safety wire are not reused", Circular),
        new("single-use parts", "a self-locking fastener that has loosened is replaced, not re-tightened", ArmyBulletin),
        new("torque the nut", "turn the nut, not the bolt, where possible", $"{Circular}, par. 7-40"),
        new("cleanliness", "threads clean and dry unless stated", $"{Circular}, par. 7-40"),
        new("lubricant", AntiSeize(), "own computation from Shigley's Mechanical Engineering Design, table 8-15"),
        new("staged tightening", string.Create(
            CultureInfo.InvariantCulture,
            $"above {StagedTightening.TwoStagesAbove.Value} lbf.ft: pattern at {StagedTightening.TwoStages.Percent[0]} % of final, then final"), ArmyManual),
        new("staged tightening", $"{string.Join(", ", StagedTightening.ThreeStages.Percent.Select(p => $"{p} %"))} in cross pattern, then circular passes",
            StagedTightening.ThreeStages.Source),
        new("wheel", "tightened dirt or paint between faces loses clamp load", "public guidance of the tyre trade"),
        new("wheel", "re-torque after 50 to 100 km", "public guidance of the tyre trade"),
        new("risk class", "class A danger to life or limb, B function failure, C nuisance; tighten A with a method that records and controls two values",
            "VDI/VDE 2862-1, from memory"),
        new("scatter", Scatter(), "VDI 2230 table A8, from memory"),
        new("re-check", "or: slacken 1/4 turn and retighten to the figure", "vehicle workshop manual, general fitting"),
        new("re-check", "back off and torque again when the fastener chatters", Circular),
        new("re-check", "do not put a torque wrench on a nut already tightened: back off, run down, tighten again", "US Navy training manual"),
        new("substitution", "stronger bolt substitution: torque to the original grade", ArmyManual),
        new("relaxation", "allow 5 % preload loss (range 2-10 %), metal-to-metal", "NASA TM-106943 (Dec 1995); NSTS 08307 Rev A (July 1998), 3.6"),
    ];

    private static string AntiSeize()
    {
        var (dry, wet) = (Factor("zinc plated"), Factor("anti-seize"));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"K {dry:0.00} dry to {wet:0.00} anti-seize: same preload needs {(1 - NutFactors.TorqueShare(dry, wet)) * 100:0} % less torque (T scales with K)");
    }

    private static string Scatter()
    {
        var (known, estimated, impact) = (TighteningFactor.Usual(TighteningMethod.TorqueFrictionKnown),
            TighteningFactor.Usual(TighteningMethod.TorqueFrictionEstimated), TighteningFactor.Usual(TighteningMethod.Impact));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"design with F_min = F_max/alphaA; hand torque wrench alphaA about {known.Low}-{known.High} (known friction), ")
            + string.Create(CultureInfo.InvariantCulture, $"{estimated.Low}-{estimated.High:0.0} (estimated), {impact.Low}-{impact.High} impact");
    }

    private static double Factor(string condition) => NutFactors.Published.First(f => f.Condition == condition).Low;
}
