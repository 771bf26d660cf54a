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
        new(HoldReason.NoRight, q => q.Now.May(q.Needs)
            ? null
            : Refuse(HoldReason.NoRight, $"You do not hold the right to {Verb(q.Needs)}", "ask somebody who does, or the lead")),
        new(HoldReason.OwnWork, OwnWork),
        new(HoldReason.AcceptanceMissing, q => q.Command is DecideHold { Disposition: Disposition.UseAsIs, Acceptance: null } && RiskOf(q) == RiskClass.A
            ? Refuse(HoldReason.AcceptanceMissing, "A class A joint is used as is only with a written acceptance by the maker or a named engineer", "attach it, or decide rework or replace")
            : null),
        new(HoldReason.ReuseNotAllowed, q => q.Command is DecideHold { Disposition: Disposition.Rework } && q.Group is { Hardware.Reuse: HardwareReuse.SingleUse }
            ? Refuse(HoldReason.ReuseNotAllowed, "This hardware is single-use: rework would use it twice", "decide replace")
            : null),
        new(HoldReason.TurnVoided, q => q.Command is DecideHold { Disposition: Disposition.UseAsIs } && q.Books.Any(book => book.HasVoidedTurn)
            ? Refuse(HoldReason.TurnVoided, "The record of an angle on it is void: it cannot be used as is", "confirm the void where it was never turned, or decide rework or replace")
            : null),
    ];

    private static HoldPoint? OwnWork(PermissionQuestion q)
    {
        if (q.Command is not (Witness or DecideHold or ConfirmCorrection))
        {
            return null;
        }

        var own = q.Doers.Contains(q.Now.Person) || q.Books.Any(book => book.Workers.Contains(q.Now.Person));
        return own
            ? Refuse(HoldReason.OwnWork, "You worked on this joint: nobody looks at or decides their own work", "ask a second person")
            : null;
    }

    private static RiskClass RiskOf(PermissionQuestion q) =>
        q.Books.SelectMany(book => book.Pulls).LastOrDefault()?.Fact.Spec.Risk ?? q.Group?.Risk ?? RiskClass.A;

    private static string Verb(Right right) => right switch
    {
        Right.Record => "sign steps",
        Right.Witness => "witness",
        Right.Author => "publish procedures",
        Right.Decide => "decide held positions",
        Right.Release => "release cars",
        _ => "do the lead's work",
    };

    private static HoldPoint Refuse(HoldReason reason, string words, string next) => new(reason, null, null, null, words, next);
}
