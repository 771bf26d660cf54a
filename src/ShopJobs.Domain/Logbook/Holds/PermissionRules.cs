using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is asked of a person: may this person sign this. Null where a part does not apply.</summary>
public sealed record PermissionQuestion(CarState State, Circumstances Now, Command Command, Right Needs)
{
    /// <summary>Positions the signature is about.</summary>
    public IReadOnlyList<PositionBook> Books { get; init; } = [];

    /// <summary>People whose own work or hold it is, besides those the positions remember.</summary>
    public IReadOnlyList<PersonId> Doers { get; init; } = [];

    /// <summary>The group in force on the position that is decided.</summary>
    public JointGroup? Group { get; init; }
}

/// <summary>One reason why a signature is refused.</summary>
public sealed record PermissionRule(HoldReason Reason, Func<PermissionQuestion, HoldPoint?> Find);

/// <summary>The rules by which signatures are refused, each one element of a list.</summary>
public static class PermissionRules
{
    public static readonly IReadOnlyList<PermissionRule> All =
    [
        new(HoldReason.NoRight, q => q.Now.May(q.Needs) ? null : new HoldPoint(HoldReason.NoRight) { Right = q.Needs }),
        new(HoldReason.ResumeFirst, q => IsOnHold(q) ? new HoldPoint(HoldReason.ResumeFirst) : null),
        new(HoldReason.JobNotRunning, q => WasGivenUp(q) ? new HoldPoint(HoldReason.JobNotRunning) : null),
        new(HoldReason.OwnWork, OwnWork),
        new(HoldReason.Tied, q => IsOfASecond(q) && Workers(q).Any(q.Now.TiedTo.Contains) ? new HoldPoint(HoldReason.Tied) : null),
        new(HoldReason.NotUsableAsIs, NotUsableAsIs),
        new(HoldReason.AcceptanceMissing, q => q.Command is DecideHold { Disposition: Disposition.UseAsIs, Acceptance: null } && RiskOf(q) == RiskClass.A
            ? new HoldPoint(HoldReason.AcceptanceMissing)
            : null),
        new(HoldReason.ReuseNotAllowed, q => q.Command is DecideHold { Disposition: Disposition.Rework } && q.Group is { Hardware.Reuse: HardwareReuse.SingleUse }
            ? new HoldPoint(HoldReason.ReuseNotAllowed)
            : null),
        new(HoldReason.VoidedTurn, q => q.Command is DecideHold { Disposition: Disposition.UseAsIs } && q.Books.Any(book => book.HasVoidedTurn)
            ? new HoldPoint(HoldReason.VoidedTurn)
            : null),
    ];

    private static HoldPoint? OwnWork(PermissionQuestion q)
    {
        return IsOfASecond(q) && Workers(q).Contains(q.Now.Person) ? new HoldPoint(HoldReason.OwnWork) : null;
    }

    // Nothing of a job is signed while it is on hold.
    private static bool IsOnHold(PermissionQuestion q) => q.Command switch
    {
        ConfirmStep confirm => confirm.Job,
        FinishStep finish => finish.Job,
        Witness witness => witness.Job,
        RecordResult result => result.Job,
        _ => (JobId?)null,
    } is { } job && q.State.Jobs.TryGetValue(job, out var book) && book.OnHold is not null;

    // Steps of a job that was cancelled or taken back have fallen.
    private static bool WasGivenUp(PermissionQuestion q) => q.Command switch
    {
        ConfirmStep confirm => confirm.Job,
        FinishStep finish => finish.Job,
        _ => (JobId?)null,
    } is { } job && q.State.Jobs.TryGetValue(job, out var book) && book is { IsRunning: false, End: JobEnd.Cancelled or JobEnd.TakenBack };

    // What only somebody else may sign.
    private static bool IsOfASecond(PermissionQuestion q) => q.Command is Witness or DecideHold or DecideWork or ConfirmCorrection or Countersign or LookOver or LookAtJoints;

    private static IEnumerable<PersonId> Workers(PermissionQuestion q) => q.Doers.Concat(q.Books.SelectMany(book => book.Workers));

    // It stands in for the failed evidence of one final record, where that is of a kind that it can.
    private static HoldPoint? NotUsableAsIs(PermissionQuestion q)
    {
        if (q.Command is not DecideHold { Disposition: Disposition.UseAsIs })
        {
            return null;
        }

        var open = q.Books.SelectMany(book => book.Holds.Where(hold => hold.Decision is null)).ToList();
        var named = q.Books.SelectMany(book => book.Pulls).Where(pull => open.Exists(hold => hold.Number == pull.Number)).ToList();
        if (named.Exists(pull => !pull.IsFinal))
        {
            return new HoldPoint(HoldReason.NotUsableAsIs);
        }

        var reasons = open.Select(hold => hold.Reason).Concat(named.SelectMany(pull => pull.Problems))
            .Where(reason => reason != HoldReason.TurnVoided && !HoldReasons.MayBeUsedAsIs(reason)).ToList();
        return reasons.Count > 0 ? new HoldPoint(HoldReason.NotUsableAsIs) { Because = new HoldPoint(reasons[0]) } : null;
    }

    internal static RiskClass RiskOf(PermissionQuestion q) =>
        q.Books.SelectMany(book => book.Pulls).LastOrDefault()?.Fact.Spec.Risk ?? q.Group?.Risk ?? RiskClass.A;
}
