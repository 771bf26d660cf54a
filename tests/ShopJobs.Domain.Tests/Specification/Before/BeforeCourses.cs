namespace ShopJobs.Domain.Tests.Specification.Before;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class BeforeCourses
{
    public static Sheet<BeforeState> WithCourses(this Sheet<BeforeState> sheet) => sheet
        .Honest("DONE", "Both steps worked and signed", s => s is { FirstSigned: Signature.Stands, SecondSigned: Signature.Stands })
        .Honest("AS-FOUND-FIRST", "What was measured as found and signed stands when the joint it was measured on is opened", s => s is { FirstSigned: Signature.Stands, Second: Bolt.Open, SecondSigned: Signature.None });

    public static Sheet<BeforeState> WithDefects(this Sheet<BeforeState> sheet) => sheet
        .Defect("a step before which is void still lets a pull count", "PULL-WAITS", "PullSecond",
            (b, _) => b.FirstSigned == Signature.Fell, (_, a) => a with { Second = Bolt.Good })
        .Defect("a step before which is void still lets a step be signed", "SIGNATURE-WAITS", "SignSecond",
            (b, _) => b is { Second: Bolt.Good, FirstSigned: Signature.Fell }, (_, a) => a with { SecondSigned = Signature.Stands })
        .Defect("a step is signed on a bolt at hand-tight", "SIGNED-WORK", "SignFirst",
            (b, _) => b.First == Bolt.HandTight, (_, a) => a with { FirstSigned = Signature.Stands })
        .Defect("a step that waits for an opened joint stays signed", "FALLS-WITH-ITS-CYCLE", "OpenFirst",
            (b, _) => b.SecondSigned == Signature.Stands, (b, a) => a with { SecondSigned = b.SecondSigned })
        .Defect("a joint opened again leaves the steps before it signed", "LATER-JOINTS", "OpenSecond",
            (b, _) => b.FirstSigned == Signature.Stands && b.Second == Bolt.Good, (b, a) => a with { FirstSigned = b.FirstSigned })
        .Defect("opening a joint for the first time voids what was signed as found", "FIRST-OPENING", "OpenSecond",
            (b, _) => b is { FirstSigned: Signature.Stands, Second: Bolt.AsFound }, (_, a) => a with { FirstSigned = Signature.Fell })
        .Defect("OPEN pressed twice voids what stands", "OPEN-IS-OPEN", "OpenSecond",
            (b, _) => b is { Second: Bolt.Open, FirstSigned: Signature.Stands }, (_, a) => a with { FirstSigned = Signature.Fell })
        .Defect("signed once, never again", "SIGNED-ANEW", "SignFirst", (b, _) => b.FirstSigned == Signature.Fell, (b, _) => b);
}
