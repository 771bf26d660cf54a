using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>The joints whose failure is a danger to life, where every fastener is tight. All others stand on top, under open.</summary>
internal static class ClassAJoints
{
    private const int MostFigures = 3;

    public static IReadOnlyList<ClassAJoint> Of(SummarySubject car) =>
    [
        .. from joint in car.Joints
           let books = joint.ToList()
           where books.TrueForAll(car.IsTight) && books.Exists(car.Covers)
           let pulls = books.SelectMany(SummarySubject.FinalPulls).ToList()
           where pulls.Exists(pull => pull.Fact.Spec.Risk == RiskClass.A)
           group (joint.Key.Place, books.Count)
               by (joint.Key.Key, Torque: Torque(car, pulls), Evidence: Evidence(pulls), Witness: Witness(pulls), ReTorque: ReTorque(car, books, pulls))
               into same
           select new ClassAJoint(
               $"{car.KindName(same.Key.Key)}, {string.Join(", ", same.Select(joint => joint.Place))}",
               same.Sum(joint => joint.Count),
               same.Key.Torque,
               same.Key.Evidence,
               same.Key.Witness,
               same.Key.ReTorque),
    ];

    /// <summary>A figure only where nobody is led to re-tighten what an angle, locker or the maker's rule forbids.</summary>
    private static string? Torque(SummarySubject car, List<Pull> pulls)
    {
        if (pulls.Exists(pull => pull.Fact.Spec.Turn is not null || pull.Fact.Spec.ReTorque is { Forbidden: true }
            || car.GroupOf(pull).Condition is ThreadCondition.Locker or ThreadCondition.PreAppliedLocker))
        {
            return null;
        }

        var figures = pulls.Select(pull => pull.AtFastener).OfType<EnteredTorque>()
            .OrderBy(torque => torque.NewtonMetres).Select(torque => torque.ToString()).Distinct().ToList();
        return figures.Count <= MostFigures ? string.Join(", ", figures) : $"{figures[0]} to {figures[^1]}";
    }

    private static string Evidence(List<Pull> pulls)
    {
        var asIs = pulls.Exists(pull => pull.AcceptedBy is not null) ? "; used as it is, see what was found" : "";
        var kinds = pulls.Select(pull => pull.Fact.Kind).ToHashSet();
        var read = (kinds.Contains(TorqueKind.Reading), kinds.Contains(TorqueKind.AngleTurned)) switch
        {
            (true, true) => "measured, torque or angle",
            (true, false) => "measured",
            (false, true) => "angle measured",
            _ => null,
        };
        return (read is null ? "click wrench" : kinds.Contains(TorqueKind.SettingConfirmed) ? $"partly {read}, else click wrench" : read) + asIs;
    }

    private static string Witness(List<Pull> pulls) =>
        pulls.TrueForAll(pull => pull.WitnessedBy is not null) ? "yes"
        : pulls.Exists(pull => pull.Fact.Spec.AsksWitness) ? "no" : "not asked";

    private static string ReTorque(SummarySubject car, List<PositionBook> books, List<Pull> pulls) =>
        books.Exists(car.State.OwesReTorque) ? "due"
        : pulls.Exists(pull => pull.Fact.Spec.Turn is not null || pull.Fact.Spec.ReTorque is { Forbidden: true }) ? "never"
        : books.Exists(book => book.SettledBy > 0) ? "done"
        : "not asked";
}
