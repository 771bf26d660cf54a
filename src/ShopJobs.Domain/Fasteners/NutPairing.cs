namespace ShopJobs.Domain.Fasteners;

/// <summary>How a nut compares with the bolt it is put on: which of the two fails first when the joint is overloaded.</summary>
public abstract record NutPairing
{
    private NutPairing()
    {
    }

    /// <summary>The bolt breaks before the thread strips.</summary>
    public sealed record FullStrength : NutPairing;

    /// <summary>The thread may strip first, which is not seen from outside; the reason says why, in a sentence.</summary>
    public sealed record MayStrip(string Reason) : NutPairing;

    /// <summary>No pairing is published; the reason completes "pairing not judged: ...".</summary>
    public sealed record NotJudged(string Reason) : NutPairing;

    /// <summary>
    /// Judges by ISO 898-2, table of pairing (from memory): a nut of class n carries bolts up to n.x; a nut of a higher class may
    /// stand in for a lower one.
    /// </summary>
    public static NutPairing Judge(StrengthClass bolt, NutClass nut)
    {
        ArgumentNullException.ThrowIfNull(bolt);
        ArgumentNullException.ThrowIfNull(nut);
        if (bolt.Standard != ThreadStandard.MetricIso || bolt.IsStainless)
        {
            return new NotJudged($"ISO 898-2 pairs bolts of ISO 898-1, and {bolt} is not one");
        }

        if (nut.HighestBoltClass is not { } highest)
        {
            return new MayStrip($"A nut of class {nut} is thin: it strips before any bolt breaks.");
        }

        return First(bolt) <= First(highest)
            ? new FullStrength()
            : new MayStrip($"A nut of class {nut} carries bolts up to {highest}; on {bolt} its thread may strip before the bolt breaks.");
    }

    private static int First(StrengthClass strength) =>
        int.Parse(strength.Name.Split('.')[0], System.Globalization.CultureInfo.InvariantCulture);
}
