namespace ShopJobs.Domain.Tests.Specification.Before;

/// <summary>What the rules ask of work that waits for a step, each in its own words.</summary>
internal static class BeforeRequirements
{
    private const string Early = "No order of commands and no set of concurrent commands opens a hold point early.";
    private const string Cycle = "A sign-off rests on the cycle of every joint its step works or waits for and of every joint that its job works later at its place, from the job's own first opening of it on.";

    public static Sheet<BeforeState> WithRequirements(this Sheet<BeforeState> sheet) => sheet
        .Must("PULL-WAITS", Early, (b, a) => b.Second != Bolt.Good && a.Second == Bolt.Good, (b, _) => b is { First: Bolt.Good, FirstSigned: Signature.Stands })
        .Must("SIGNATURE-WAITS", Early, (b, a) => b.SecondSigned != Signature.Stands && a.SecondSigned == Signature.Stands,
            (b, _) => b is { FirstSigned: Signature.Stands, First: Bolt.Good, Second: Bolt.Good })
        .Must("SIGNED-WORK", "No sign-off and no release while a position it depends on does not count.",
            (_, a) => a.FirstSigned == Signature.Stands, (_, a) => a.First == Bolt.Good)
        .MustOn("OpenFirst", "FALLS-WITH-ITS-CYCLE", Cycle, (b, _) => b.SecondSigned == Signature.Stands, (_, a) => a.SecondSigned == Signature.Fell)
        .MustOn("OpenSecond", "LATER-JOINTS", Cycle, (b, _) => b.FirstSigned == Signature.Stands && (b.Second is Bolt.HandTight or Bolt.Good),
            (b, a) => a.FirstSigned != Signature.Stands && a.First == b.First)
        .MustOn("OpenSecond", "FIRST-OPENING", Cycle, (b, _) => b is { FirstSigned: Signature.Stands, Second: Bolt.AsFound },
            (_, a) => a.FirstSigned == Signature.Stands)
        .MustOn("OpenSecond", "OPEN-IS-OPEN", "OPEN on an open joint starts no cycle.", (b, _) => b.Second == Bolt.Open, (b, a) => b == a)
        .MustOn("SignFirst", "SIGNED-ANEW", "When one of these moves, or a record it rests on is voided, it is void and may be signed again.",
            (b, _) => b is { First: Bolt.Good, FirstSigned: Signature.Fell }, (_, a) => a.FirstSigned == Signature.Stands);
}
