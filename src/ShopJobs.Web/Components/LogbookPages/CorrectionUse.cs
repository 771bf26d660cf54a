using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>Which buttons an entry offers; the decision itself is the domain's.</summary>
internal static class CorrectionUse
{
    public static EntryUse Of(CarState state, Recorded entry, Present? looks)
    {
        if (looks is null)
        {
            return EntryUse.Read;
        }

        if (entry.Entry is Corrected fact)
        {
            return state.Corrections.TryGetValue(entry.Number, out var correction) && !correction.Confirmed && state.GainsByASecond(correction)
                && !state.Corrections.Values.Any(later => later.Fact.Target == fact.Target && later.Number > entry.Number)
                ? EntryUse.Confirm
                : EntryUse.Read;
        }

        return state.Correctables.TryGetValue(entry.Number, out var target)
            && (target.Person == looks.Person || looks.May(Right.Lead))
            && !state.Corrections.Values.Any(earlier => earlier.Fact.Target == entry.Number && earlier.Fact.Restated is null)
            && (entry.Entry is not Opened || state.CanBeTakenBack(entry.Number))
            ? EntryUse.Correct
            : EntryUse.Read;
    }

    /// <summary>What whoever voids the record of an angle, or confirms that void, has to know first; null where no angle is concerned.</summary>
    public static string? AboutTurn(CarState state, Entry entry) => entry switch
    {
        TorqueRecorded pull when pull.IsTurn() =>
            "The bolt may be turned already: voiding its record holds it. Do not turn it again before the lead has decided.",
        Corrected { Restated: null } fact when state.Correctables.TryGetValue(fact.Target, out var target) && target.Entry is TorqueRecorded pull && pull.IsTurn() =>
            "Confirm it only where the bolt was never turned: the screen then asks for the turn. Where it was turned, or nobody knows, decide rework or replace on its held position.",
        _ => null,
    };

    /// <summary>What whoever takes back an opening, a condition or new hardware, or confirms that, has to know first; null for any other entry.</summary>
    public static string? AboutOpening(CarState state, Entry entry) => entry switch
    {
        Opened => "Only where the joint was never touched: the wrong corner, the wrong car. It shows open until a second person has looked at it and confirms.",
        CarConditionDeclared => "The condition is asked again, and whatever was pulled on this word no longer counts: back it off and redo it.",
        FittedNew => "The hardware there is not new, then: what was run down or pulled on it since is backed off. Record FITTED NEW where it went on.",
        Corrected fact when state.Correctables.TryGetValue(fact.Target, out var target) && target.Entry is Opened =>
            "Look at the joint itself. Confirm only where it was never opened: its records are then valid as they were before.",
        _ => null,
    };

    /// <summary>What a signature covers that restates this entry or, where it is a correction, confirms it.</summary>
    public static Covering Covers(CarState state, Circumstances now, Recorded entry) => entry.Entry is Corrected
        ? state.AsShown(now, new ConfirmCorrection(entry.Number, Unread, "")).Covers
        : entry.Entry is TorqueRecorded ? state.AsShown(now, new Restate(entry.Number, default, Unread, "")).Covers
        : Covering.Nothing;

    private static readonly ContentDigest Unread = ContentDigest.Of([], []);

    /// <summary>Who may confirm it, in words.</summary>
    /// <param name="deciders">Everybody with the right to decide today.</param>
    public static string MayConfirm(IEnumerable<PeopleShelf.Named> deciders, IReadOnlySet<PersonId> notBy) =>
        deciders.Where(person => !notBy.Contains(person.Id)).Select(person => person.Name).ToList() is { Count: > 0 } names
            ? $"May confirm it: {string.Join(", ", names)}."
            : "Nobody here may confirm it: everybody with the right to decide worked on it.";

    /// <summary>Who may not confirm a correction; nobody where the entry is none.</summary>
    public static IReadOnlySet<PersonId> NotBy(CarState state, Recorded entry) =>
        entry.Entry is Corrected && state.Corrections.TryGetValue(entry.Number, out var correction) ? NotBy(state, correction) : new HashSet<PersonId>();

    /// <summary>Whoever worked on what is corrected, made the correction or recorded the entry.</summary>
    public static IReadOnlySet<PersonId> NotBy(CarState state, CorrectionBook correction)
    {
        var target = state.Correctables[correction.Fact.Target];
        var workers = target.Entry is TorqueRecorded pull ? state.Of(pull.Position).Workers : [];
        return workers.Union([correction.Person, target.Person]);
    }
}
