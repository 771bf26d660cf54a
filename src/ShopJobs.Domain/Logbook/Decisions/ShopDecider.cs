namespace ShopJobs.Domain.Logbook;

/// <summary>The lead compared the clock with one he trusts and signs that it is right.</summary>
/// <param name="Shown">Digest, in hex, of the lines that were shown.</param>
/// <param name="AsOf">Newest entry of the shop's logbook that was shown: where there is a newer one, it is refused with “look again”.</param>
public sealed record SetClock(string Shown, long AsOf);

/// <summary>Decides what the lead says of the shop as a whole. Pure.</summary>
public static class ShopDecider
{
    /// <summary>Decides whether the time is set again.</summary>
    /// <param name="state">The shop's state, with a step of the clock that is not written yet.</param>
    /// <param name="rights">Rights of the signer.</param>
    public static Verdict Decide(this ShopState state, SetClock command, IReadOnlySet<Right> rights)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(command);
        ArgumentNullException.ThrowIfNull(rights);
        return command.AsOf != state.Number ? Refuse(new HoldPoint(HoldReason.LookAgain) { Entry = state.Number })
            : !rights.Contains(Right.Lead) ? Refuse(new HoldPoint(HoldReason.NoRight) { Right = Right.Lead })
            : !state.ClockInDoubt ? Refuse(new HoldPoint(HoldReason.ClockNotInDoubt))
            : new Verdict.Accepted([new ClockSet([.. state.Steps.Where(step => step.IsOpen).Select(step => step.Number)], command.Shown)]);
    }

    private static Verdict.Refused Refuse(HoldPoint point) => new([point]);
}
