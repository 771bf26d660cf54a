using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Coming in, moving and leaving. Asked first they are permissions; told afterwards they are facts, recorded with what was against them.
public static partial class Decider
{
    private static Verdict Arrive(CarState state, ComeIn come, Circumstances now)
    {
        var refused = AgainstReading(state, come.Odometer, come.OdometerWhy, needed: come.OdometerWhy is null);
        if (state.Visit is { IsOpen: true })
        {
            refused.Add(new HoldPoint(HoldReason.AlreadyHere));
        }

        refused.AddRange(NoRoom(now, come.Place));
        refused.AddRange(NoCase(state, come.Warranty));
        if (come.FuelEighths is < 0 or > 8)
        {
            refused.Add(new HoldPoint(HoldReason.FuelOutside));
        }

        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new Arrived(come.Odometer, come.Place, come.Why)
            {
                OdometerWhy = come.OdometerWhy,
                FuelEighths = come.FuelEighths,
                Things = come.Things,
                AsksAsFound = come.AsksAsFound,
                Warranty = come.Warranty is { } joints ? new WarrantyCase([.. joints.Distinct()], [.. joints.Distinct().SelectMany(state.RecordsOf)]) : null,
            });
    }

    // A warranty case is about work of the shop: joints with a record, one at least.
    private static IEnumerable<HoldPoint> NoCase(CarState state, IReadOnlyList<Joint>? warranty) => warranty switch
    {
        null => [],
        [] => [new HoldPoint(HoldReason.NoPosition)],
        _ => warranty.Where(joint => state.RecordsOf(joint).Count == 0).Select(joint => new HoldPoint(HoldReason.UnknownPosition) { Position = joint.At(1) }),
    };

    private static Verdict Move(CarState state, MoveCar move, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, move, Right.Record));
        refused.AddRange(NoWay(state, now, move.From, move.To));
        refused.AddRange(rules.OnRelease(state, now, ReleaseKind.Move, customerAccepted: false));
        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new CarMoved(move.From, move.To, []));
    }

    private static Verdict Moved(CarState state, ReportMoved moved, Circumstances now, HoldRules rules)
    {
        var refused = NoWay(state, now, moved.From, moved.To).ToList();
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new CarMoved(moved.From, moved.To, Spoken(rules.OnRelease(state, now, ReleaseKind.Move, customerAccepted: false))) { Why = moved.Why });
    }

    private static Verdict Leave(CarState state, LetGo let, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, let, Right.Record));
        refused.AddRange(AgainstReading(state, let.Odometer, let.OdometerWhy, needed: false));
        refused.AddRange(NotHere(state));
        refused.AddRange(AgainstLeaving(state, now, rules, let.Way, let.Odometer));
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new Left(let.Way, let.TakenBy, let.Odometer, RoadUnder(state, now), []) { OdometerWhy = let.OdometerWhy });
    }

    private static Verdict Gone(CarState state, ReportGone gone, Circumstances now, HoldRules rules)
    {
        var refused = AgainstReading(state, gone.Odometer, gone.OdometerWhy, needed: false);
        refused.AddRange(NotHere(state));
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new Left(gone.Way, gone.TakenBy, gone.Odometer, RoadUnder(state, now), Spoken(AgainstLeaving(state, now, rules, gone.Way, gone.Odometer)))
            {
                OdometerWhy = gone.OdometerWhy,
                Why = gone.Why,
            });
    }

    private static Verdict LookAtMoves(CarState state, LookOver look, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, look, Right.Witness) { Doers = [.. state.ToLookOver.Select(move => move.Person)] });
        if (state.ToLookOver.IsEmpty)
        {
            refused.Add(new HoldPoint(HoldReason.NothingToLookOver));
        }

        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new LookedOver([.. state.ToLookOver.Select(move => move.Number)], look.Finding, look.Shown));
    }

    private static Verdict Extend(CarState state, ExtendReTorque extend, Circumstances now, HoldRules rules)
    {
        if (UnknownPositions(state, extend.Positions, now) is { } unknown)
        {
            return unknown;
        }

        var refused = Permissions(rules, new PermissionQuestion(state, now, extend, Right.Lead));
        refused.AddRange(AgainstReading(state, extend.Odometer, extend.OdometerWhy, needed: true));
        refused.AddRange(
            from position in extend.Positions.Distinct()
            where extend.Odometer is { } odometer && !state.MayBeExtended(now, state.Of(position), odometer.Km)
            select new HoldPoint(HoldReason.NoNewInterval) { Position = position });
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new ReTorqueExtended([.. extend.Positions.Distinct()], now.DayShown, extend.Odometer!.Value, extend.Reason, extend.Shown) { OdometerWhy = extend.OdometerWhy });
    }

    // Below the last reading never without a word; no reading only where none is needed.
    private static List<HoldPoint> AgainstReading(CarState state, OdometerReading? reading, ContentDigest? why, bool needed) =>
        reading is null && needed ? [new HoldPoint(HoldReason.OdometerMissing)]
        : reading?.Km < state.Odometer && why is null ? [new HoldPoint(HoldReason.OdometerBelowLast) { Km = state.Odometer }]
        : [];

    private static IEnumerable<HoldPoint> NotHere(CarState state) => state.Visit is { IsOpen: false } ? [new HoldPoint(HoldReason.NotHere)] : [];

    private static IEnumerable<HoldPoint> NoWay(CarState state, Circumstances now, string from, string to) =>
    [
        .. NotHere(state),
        .. from == to ? [new HoldPoint(HoldReason.AlreadyThere)] : NoRoom(now, to),
    ];

    // A car is only ever put where the shop has a place now: elsewhere nobody would find it on the floor.
    private static IEnumerable<HoldPoint> NoRoom(Circumstances now, string place) =>
        now.Places.Find(place)?.InUse != true ? [new HoldPoint(HoldReason.PlaceNotInUse) { Name = now.Places.NameOf(place) }]
        : now.TakenBy(place) is { } other ? [new HoldPoint(HoldReason.PlaceTaken) { Name = other }]
        : [];

    private static IReadOnlyList<HoldPoint> AgainstLeaving(CarState state, Circumstances now, HoldRules rules, WayOut way, OdometerReading? odometer)
    {
        if (way == WayOut.OnTrailer)
        {
            return rules.OnRelease(state, now, ReleaseKind.Move, customerAccepted: false);
        }

        var road = state.StandingOf(now, ReleaseKind.Road);
        return !road.IsGood ? [new HoldPoint(HoldReason.NotReleased), .. road.Why]
            : odometer?.Km > road.Release!.Fact.LapsesAtKm ? [new HoldPoint(HoldReason.NotReleased) { Km = road.Release.Fact.LapsesAtKm }]
            : [];
    }

    private static long? RoadUnder(CarState state, Circumstances now) =>
        state.StandingOf(now, ReleaseKind.Road) is { IsGood: true, Release: { } road } ? road.Number : null;

    private static IReadOnlyList<SpokenAgainst> Spoken(IEnumerable<HoldPoint> points) =>
        [.. points.Select(point => new SpokenAgainst(point.Reason, point.Position)).Distinct()];
}
