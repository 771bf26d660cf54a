namespace ShopJobs.Domain.Logbook;

/// <summary>What reasons have in common.</summary>
public static class HoldReasons
{
    /// <summary>
    /// <em>Use as is</em> stands in for the failed evidence of the one final record it names, never for a missing pull, stage or opening.
    /// </summary>
    public static bool MayBeUsedAsIs(HoldReason reason) => reason is not (
        HoldReason.LowerStageMissing or HoldReason.BackOffFirst or HoldReason.CellMoved or HoldReason.NotHandTight
        or HoldReason.RidesOnLoose or HoldReason.StillOn or HoldReason.UnfinishedBehind or HoldReason.TurnVoided or HoldReason.NotOpened);
}
