using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Coming in, moving and leaving; the odometer; the new interval of a re-torque.
internal sealed partial class Ledger
{
    /// <summary>The place that another car of the test shop takes up.</summary>
    public const string TakenPlace = "LiftB";

    /// <summary>The place of the test shop that is not in use any more.</summary>
    public const string PlaceOutOfUse = "Booth";

    private IEnumerable<Reason> OfVisiting(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, Command command, DateOnly today) => command switch
    {
        ComeIn come => Plain(
            (HoldReason.OdometerMissing, come.Odometer is null && come.OdometerWhy is null),
            (HoldReason.OdometerBelowLast, IsBelowLast(come.Odometer?.Km, come.OdometerWhy)),
            (HoldReason.AlreadyHere, CameOrWent?.Entry is Arrived),
            (HoldReason.PlaceNotInUse, come.Place == PlaceOutOfUse),
            (HoldReason.PlaceTaken, come.Place == TakenPlace)),
        MoveCar move => [.. Plain((HoldReason.NoRight, !rights.Contains(Right.Record))), .. AgainstWay(move.From, move.To), .. AgainstMoving(today)],
        ReportMoved moved => AgainstWay(moved.From, moved.To),
        LetGo let =>
        [
            .. Plain(
                (HoldReason.NoRight, !rights.Contains(Right.Record)),
                (HoldReason.OdometerBelowLast, IsBelowLast(let.Odometer?.Km, let.OdometerWhy)),
                (HoldReason.NotHere, CameOrWent?.Entry is Left)),
            .. AgainstLeaving(let.Way, let.Odometer?.Km, today),
        ],
        ReportGone gone => Plain(
            (HoldReason.OdometerBelowLast, IsBelowLast(gone.Odometer?.Km, gone.OdometerWhy)),
            (HoldReason.NotHere, CameOrWent?.Entry is Left)),
        LookOver => Plain(
            (HoldReason.NoRight, !rights.Contains(Right.Witness)),
            (HoldReason.OwnWork, ToLookOver.Any(move => move.Person == person)),
            (HoldReason.Tied, ToLookOver.Any(move => ties.Contains(move.Person))),
            (HoldReason.NothingToLookOver, !ToLookOver.Any())),
        ExtendReTorque extend => Plain(
            (HoldReason.NoRight, !rights.Contains(Right.Lead)),
            (HoldReason.OdometerMissing, extend.Odometer is null),
            (HoldReason.OdometerBelowLast, IsBelowLast(extend.Odometer?.Km, extend.OdometerWhy)),
            (HoldReason.NoNewInterval, extend.Odometer is { } read && extend.Positions.Any(position => !MayBeExtended(position, read.Km, today)))),
        _ => [],
    };

    private static IReadOnlyList<HoldReason> Reasons(IEnumerable<Reason> reasons) => [.. reasons.Select(reason => reason.Why).Distinct()];

    private Line? CameOrWent => lines.LastOrDefault(line => line.Entry is Arrived or Left);

    private IEnumerable<Line> ToLookOver => lines.Where(line => line.Against.Count > 0
        && !lines.Any(look => look.Entry is LookedOver && look.Number > line.Number));

    private static IEnumerable<Reason> Plain(params IEnumerable<(HoldReason, bool)> reasons) => Those(reasons).Select(why => new Reason(why));

    private IEnumerable<Reason> AgainstWay(string from, string to) => Plain(
        (HoldReason.NotHere, CameOrWent?.Entry is Left),
        (HoldReason.AlreadyThere, from == to),
        (HoldReason.PlaceNotInUse, from != to && to == PlaceOutOfUse),
        (HoldReason.PlaceTaken, from != to && to == TakenPlace));

    private IEnumerable<Reason> AgainstMoving(DateOnly today) => RulesOf(ReleaseKind.Move, accepted: false, null, today, _ => true, _ => false);

    // On a trailer it has to be moved; driven, a road release has to stand.
    private IEnumerable<Reason> AgainstLeaving(WayOut way, decimal? odometer, DateOnly today)
    {
        if (way == WayOut.OnTrailer)
        {
            return AgainstMoving(today);
        }

        if (RoadNow(today) is { } number)
        {
            return odometer > ((Released)At(number).Entry).LapsesAtKm ? [new(HoldReason.NotReleased)] : [];
        }

        return StandingOf(ReleaseKind.Road, today) == ReleaseStandingKind.Suspended
            ? AgainstStanding(NewestRelease(ReleaseKind.Road)!, today).Append(new(HoldReason.NotReleased))
            : [new(HoldReason.NotReleased)];
    }

    private long? RoadNow(DateOnly today) =>
        StandingOf(ReleaseKind.Road, today) == ReleaseStandingKind.Stands ? NewestRelease(ReleaseKind.Road)!.Number : null;

    private bool IsBelowLast(decimal? km, ContentDigest? why) => why is null && km < LastKm;

    /// <summary>The odometer as it was last read.</summary>
    private decimal? LastKm => lines.Select(line => line.Entry switch
    {
        Released fact => fact.OdometerKm,
        Settled fact => fact.OdometerKm,
        RoadTestEnded fact => fact.Odometer.Km,
        Arrived fact => fact.Odometer?.Km,
        Left fact => fact.Odometer?.Km,
        ReTorqueExtended fact => fact.Odometer.Km,
        _ => null,
    }).LastOrDefault(read => read is not null);

    // Rule 14: at its last day, below its distance, once.
    private bool MayBeExtended(JointPosition position, decimal odometer, DateOnly today) =>
        OwesReTorque(position) && FirstDrive(position) is { Entry: Released { OdometerKm: { } at } } drive && GroupOf(LastPull(position)!).Rules.ReTorque is { } rule
        && odometer < at + rule.AfterKm && clock.Doubt is null && IsPastLimit(position, rule, drive, today) && IntervalOf(position, drive) is null;
}
