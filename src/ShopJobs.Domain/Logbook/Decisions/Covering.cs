using System.Text.Json.Serialization;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a signature covers: the entries that were shown, and the doubts of tools.</summary>
/// <param name="Entries">Numbers in the car's logbook, lowest first.</param>
/// <param name="Doubts">Doubts that stand on the position.</param>
public sealed record Covering(IReadOnlyList<long> Entries, IReadOnlyList<ToolDoubt> Doubts)
{
    /// <summary>Nothing was shown, or nothing that can change.</summary>
    public static readonly Covering Nothing = new([], []);

    /// <summary>These entries alone.</summary>
    public static Covering Of(params IEnumerable<long> entries) => new([.. entries.Where(number => number > 0).Distinct().Order()], []);

    public bool Equals(Covering? other) =>
        other is not null && Entries.SequenceEqual(other.Entries) && Doubts.SequenceEqual(other.Doubts);

    public override int GetHashCode() => HashCode.Combine(Entries.Count, Doubts.Count, Entries.Count > 0 ? Entries[^1] : 0);
}

/// <summary>Finds what a signed command covers now. The screen asks it when it draws, the decision asks it again.</summary>
public static class Coverings
{
    /// <summary>What the command covers on the car as it is.</summary>
    public static Covering Of(CarState state, Circumstances now, SignedCommand command)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return command switch
        {
            ConfirmStep { NotApplicable: false } confirm when StepOf(state, now, confirm) is var (job, placed, step) =>
                WithCorrections(state, SignOffs.RestsOn(state, job, placed, step).Concat(OfFinished(state, job, placed, confirm.With))),
            Witness witness => WithCorrections(state, Witnessing.Awaiting(state, now, witness).Select(pull => pull.Number)),
            DecideHold decide => new Covering(
                WithCorrections(state, Deciding.About(state, now, decide.Position)).Entries,
                [.. state.DoubtsOn(state.Of(decide.Position), now.Tool).OrderBy(doubt => doubt.Tool.Value).ThenBy(doubt => doubt.Number)]),
            DecideRow row => OfRow(state, now, row),
            DecideWork decide when state.WorkHolds.TryGetValue(decide.Hold, out var hold) => WithCorrections(state, Deciding.About(state, hold)),
            Restate restate => Covering.Of(CorrectionsOf(state, restate.Target).Append(restate.Target)),
            ConfirmCorrection { Correction: var number } when state.Corrections.TryGetValue(number, out var correction) =>
                Covering.Of(CorrectionsOf(state, correction.Fact.Target)),
            RecordSettled settled => Covering.Of(settled.Positions.Select(position => state.Of(position).Last?.Number ?? 0)),
            LookAtJoints look => Covering.Of(state.FewerAsked.ContainsKey(look.Asked) ? look.Asked : 0, state.JointsBy),
            ChangeJointList => Covering.Of(state.FewerAsked.Keys.Append(state.JointsBy)),
            LookOver => Covering.Of(state.ToLookOver.Select(move => move.Number)),
            ExtendReTorque extend => Covering.Of(extend.Positions.Select(position => state.Of(position).Last?.Number ?? 0)),
            Release or UpholdRelease or WithdrawRelease or JobCommand => Covering.Of(state.Number),
            Countersign countersign => WithCorrections(state, countersign.Records.Concat(RestsOfSteps(state, countersign))),
            _ => Covering.Nothing,
        };
    }

    /// <summary>The command with what it covers now: for whoever draws what is to be signed.</summary>
    public static T AsShown<T>(this CarState state, Circumstances now, T command)
        where T : SignedCommand
    {
        ArgumentNullException.ThrowIfNull(command);
        return command with { Covers = Of(state, now, command) };
    }

    // A row shows the newest pull of each fastener beside what holds it.
    private static Covering OfRow(CarState state, Circumstances now, DecideRow row)
    {
        var each = row.Positions.Distinct().Select(position => (Book: state.Of(position), Covers: Of(state, now, row.On(position)))).ToList();
        return new Covering(
            Covering.Of(each.SelectMany(one => one.Covers.Entries.Append(one.Book.Last?.Number ?? 0))).Entries,
            [.. each.SelectMany(one => one.Covers.Doubts)]);
    }

    // The words that the steps signed with it are done, and what each rests on.
    private static IEnumerable<long> OfFinished(CarState state, JobBook job, Procedures.PlacedProcedure placed, IReadOnlyList<string>? steps) =>
        from id in steps ?? []
        let step = placed.Step(id)
        where step is not null
        from number in SignOffs.RestsOn(state, job, placed, step).Append(job.Finished.GetValueOrDefault(id)?.Number ?? 0)
        select number;

    // Whoever answers for a step was shown what its sign-off rests on.
    private static IEnumerable<long> RestsOfSteps(CarState state, Countersign countersign) =>
        state.Jobs.Values.SelectMany(job => job.SignOffs.Values).Where(sign => countersign.Records.Contains(sign.Number)).SelectMany(sign => sign.Fact.RestsOn);

    // Whoever was shown a record was shown it as it was corrected by then.
    private static Covering WithCorrections(CarState state, IEnumerable<long> numbers) => numbers.ToList() is var shown && state.Corrections.IsEmpty
        ? Covering.Of(shown)
        : Covering.Of(shown.Concat(shown.SelectMany(number => CorrectionsOf(state, number))));

    private static IEnumerable<long> CorrectionsOf(CarState state, long target) =>
        state.Corrections.Values.Where(correction => correction.Fact.Target == target).Select(correction => correction.Number);

    private static (JobBook Job, Procedures.PlacedProcedure Placed, Procedures.StepInstance Step)? StepOf(CarState state, Circumstances now, ConfirmStep confirm) =>
        state.Jobs.TryGetValue(confirm.Job, out var job) && now.Placed(job) is var placed && placed.Step(confirm.Step) is { } step
            ? (job, placed, step)
            : null;
}
