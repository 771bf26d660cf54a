namespace ShopJobs.Domain.Tests.Specification.Holds;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class HeldCourses
{
    public static Sheet<HeldState> WithCourses(this Sheet<HeldState> sheet) => sheet
        .Honest("USED", "Over, used as is on nut and stud", s => s is { Counts: true, Pulled: Pulled.Used })
        .Honest("REDONE", "Over, the stud used as is, the nut replaced and redone", s => s is { Counts: true, Pulled: Pulled.Good, New: true })
        .Honest("STUD-WAITS", "The nut redone while its stud waits for its decision", s => s is { HandTight: true, IsHeld: false, Stud: Hold.Standing });

    public static Sheet<HeldState> WithDefects(this Sheet<HeldState> sheet) => sheet
        .Defect("an over-torque leaves its stud free", "OVER-HOLDS-BOTH", "PullOver", (_, _) => true, (_, a) => a with { Stud = Hold.None })
        .Defect("a nut pulled to 145 replaced while its stud goes on", "HELD-COUNTS-NOT", "Pull", (_, _) => true, (_, a) => a with { Stud = Hold.Standing })
        .Defect("opening clears a hold", "OPENING-CLEARS-NONE", "Open", (b, _) => b.IsUndecided, (_, a) => a.Each(_ => Hold.None))
        .Defect("voiding the pull clears its hold", "VOIDING-CLEARS-NONE", "VoidThePull", (_, _) => true, (_, a) => a with { Over = Hold.None, Pulled = Pulled.No })
        .Defect("a new job clears a hold", "A-JOB-CLEARS-NONE", "NewJob", (b, _) => b.IsUndecided, (_, a) => a.Each(_ => Hold.None))
        .Defect("a restatement alone clears the hold", "ONE-ALONE-CLEARS-NONE", "SayASlip", (_, _) => true, (_, a) => a with { Over = Hold.None, Pulled = Pulled.Good })
        .Defect("new hardware clears a hold nobody decided", "NEW-HARDWARE-CLEARS-NONE", "FitNew", (b, _) => b.IsUndecided, (_, a) => a.Each(_ => Hold.None))
        .Defect("replace is done by running it down again", "REPLACE-NEEDS-NEW", "HandTight", (b, _) => b.Over == Hold.Replace, (_, a) => a.Each(_ => Hold.None))
        .Defect("replace is done by opening it", "REPLACE-STAYS", "Open", (b, _) => b.Over == Hold.Replace, (_, a) => a.Each(_ => Hold.None))
        .Defect("single-use hardware is reworked", "REWORK-NEEDS-REUSE", "DecideStudRework", (_, _) => true, (_, a) => a with { Stud = Hold.Rework })
        .Defect("the doer decides his own work", "NOT-THE-DOER", "DecideByTheDoer", (_, _) => true, (_, a) => a.Each(_ => Hold.None))
        .Defect("the doer confirms his own slip", "A-SECOND-CONFIRMS", "ConfirmByTheDoer", (_, _) => true, (_, a) => a with { Over = Hold.None })
        .Defect("a confirmed slip leaves the hold", "A-SLIP-LIFTS", "ConfirmByASecond", (b, _) => b.Said == Said.Slip, (b, a) => (a with { Over = b.Over }).Told())
        .Defect("a pull told twice stays held", "TOLD-TWICE-LIFTS", "ConfirmByASecond", (b, _) => b.Said == Said.SamePull, (b, a) => (a with { Twin = b.Twin }).Told())
        .Defect("deciding the nut decides its stud", "THE-STUD-BY-ITSELF", "Decide", (b, _) => b.Stud == Hold.Standing, (_, a) => a with { Stud = Hold.None });
}
