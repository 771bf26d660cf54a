using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.ReTorques;

/// <summary>From when a re-torque is reckoned, what settles, and which release waits for it.</summary>
internal static class ReTorqueRules
{
    private const string First = "A due re-torque is reckoned from the first release to road, track or road test after the joint's final pull";
    private const string Day = "at the date limit the lead signs settling early or a new interval";

    public static RuleBook<DrivenJoint> Book() => Faults(Courses(Requirements(Actions(
        new RuleBook<DrivenJoint>("Re-torque after the drive", DrivenJoint.Start, joint => joint.ToString())))));

    private static RuleBook<DrivenJoint> Actions(RuleBook<DrivenJoint> book) => book
        .Action("Release", DrivenJoint.Releases, (joint, asked) => asked != Asked.RoadFromALowerOdometer || joint.Km > 0, (joint, asked) => joint.Release(asked))
        .Action("Drive", joint => joint is { Out: true, Km: < DrivenJoint.Furthest }, joint => joint.Drive())
        .Action("Come back", joint => joint.Out, joint => joint.Back())
        .Action("Withdraw the release", joint => joint.Out, joint => joint.Withdraw())
        .Action("Re-torque", joint => joint is { First: >= 0, Settled: false }, joint => joint.ReTorque())
        .Action("Its last day ends", joint => joint is { First: >= 0, DayOver: false }, joint => joint.DayEnds())
        .Action("Settle early, signed by the lead", joint => joint is { First: >= 0, Settled: false } && joint.Km - joint.First < DrivenJoint.Due, joint => joint.SettleEarly())
        .Action("Give a new interval, signed by the lead", joint => joint is { First: >= 0, Settled: false } && joint.Km - joint.First < DrivenJoint.Due, joint => joint.Extend())
        .Action("Open and pull again", joint => joint.First >= 0, joint => joint.PullAnew());

    private static RuleBook<DrivenJoint> Requirements(RuleBook<DrivenJoint> book) => book
        .On("Release", "14", "FIRST-RELEASE-STARTS", First,
            (before, after) => after.Granted && before.First < 0, (_, after) => after.From == after.Km)
        .On("Release", "14", "LATER-RELEASE-KEEPS", First,
            (before, after) => after.Granted && before.First >= 0, (before, after) => after.From == before.First)
        .On("Open and pull again", "14", "PULL-STARTS-ANEW", "after the joint's final pull",
            (_, _) => true, (_, after) => after is { From: -1, Settled: false })
        .On("Re-torque", "14", "TOO-EARLY-SETTLES-NOTHING",
            "Below its km nothing settles (the pull is recorded, is no second pull, and doesn't settle)",
            (before, _) => before.Km - before.First < DrivenJoint.Due, (_, after) => after is { Settled: false, Held: false })
        .On("Re-torque", "14", "IN-TIME-SETTLES", "Below its km nothing settles",
            (before, _) => before.Km - before.First >= DrivenJoint.Due, (_, after) => after.Settled)
        .On("Settle early, signed by the lead", "14", "EARLY-ONLY-AT-THE-DAY", Day,
            (_, after) => after.Granted, (before, _) => before.DayOver)
        .On("Settle early, signed by the lead", "14", "DAY-HAS-A-WAY-OUT", Day,
            (before, _) => before.DayOver, (_, after) => after.Settled)
        .On("Give a new interval, signed by the lead", "14", "INTERVAL-ONLY-AT-THE-DAY", Day,
            (_, after) => after.Granted, (before, _) => before.DayOver)
        .On("Give a new interval, signed by the lead", "14", "INTERVAL-ONCE", Day,
            (before, _) => before.Extended, (_, after) => !after.Granted)
        .On("Give a new interval, signed by the lead", "14", "INTERVAL-RUNS-ANEW", Day,
            (before, _) => before is { DayOver: true, Extended: false }, (_, after) => after is { Granted: true, Overdue: false, Settled: false })
        .On("Release", "section 3", "TRACK-WAITS", "A due re-torque refuses track unless the customer's written acceptance is recorded",
            (_, after) => after is { Asked: Asked.Track, Granted: true }, (before, _) => before.Settled)
        .On("Release", "section 3", "ROAD-LAPSES", "road is given with the km and date at which it lapses",
            (before, after) => after.Asked == Asked.Road && before.Overdue, (_, after) => !after.Granted)
        .On("Release", "14", "ODOMETER-NEVER-BACK", "An odometer below the last one asks",
            (_, after) => after.Asked == Asked.RoadFromALowerOdometer, (_, after) => !after.Granted)
        .On("Withdraw the release", "12", "NOT-DRIVEN-STARTS-NOTHING", "a withdrawn release that was not driven starts no re-torque",
            (before, _) => before is { Driven: false, Again: false }, (_, after) => after.From < 0)
        .On("Withdraw the release", "14", "DRIVEN-COUNTS-ON", First,
            (before, _) => before.Driven || before.Again, (before, after) => after.From == before.From);

    private static RuleBook<DrivenJoint> Courses(RuleBook<DrivenJoint> book) => book
        .Ends("14", "DAY-30-WITH-FEW-KM", "Re-torque 30 km early; at day 30 with 20 km", joint => joint is { DayOver: true, Settled: true, Km: 1 })
        .Ends("14", "TRAILERED-HOME-AND-BACK", "A trailered car: a new interval at its last day, then to the road", joint => joint is { Asked: Asked.Road, Granted: true, Extended: true, Km: 0 })
        .Ends("14", "TRAILERED-TO-TRACK", "A trailered car that goes to track alone", joint => joint is { Asked: Asked.TrackAccepted, Granted: true, Km: 0 })
        .Ends("14", "SETTLED-IN-TIME", "Re-torqued after the drive and on to track", joint => joint is { Asked: Asked.Track, Granted: true, DayOver: false });

    private static RuleBook<DrivenJoint> Faults(RuleBook<DrivenJoint> book) => book
        .Fault("the first release starts nothing", "FIRST-RELEASE-STARTS", "Release",
            (before, after) => before.First < 0 && after.Granted, (_, joint) => joint with { From = -1 })
        .Fault("each new release restarts the re-torque", "LATER-RELEASE-KEEPS", "Release",
            (before, after) => after.Granted && before.First >= 0, (_, joint) => joint with { From = joint.Km })
        .Fault("a joint pulled again goes on with the old reckoning", "PULL-STARTS-ANEW", "Open and pull again",
            (_, _) => true, (before, joint) => joint with { From = before.From })
        .Fault("a re-torque after 30 km settles", "TOO-EARLY-SETTLES-NOTHING", "Re-torque",
            (before, _) => before.Km > before.First, (_, joint) => joint with { Settled = true })
        .Fault("a re-torque too early is taken for a second pull", "TOO-EARLY-SETTLES-NOTHING", "Re-torque",
            (_, after) => !after.Settled, (_, joint) => joint with { Held = true })
        .Fault("a re-torque in time does not settle", "IN-TIME-SETTLES", "Re-torque",
            (before, after) => after.Settled && !before.Settled, (_, joint) => joint with { Settled = false })
        .Fault("the lead settles on the first day", "EARLY-ONLY-AT-THE-DAY", "Settle early, signed by the lead",
            (_, after) => !after.Granted, (_, joint) => joint with { Settled = true, Granted = true })
        .Fault("a car that is not driven can never be settled", "DAY-HAS-A-WAY-OUT", "Settle early, signed by the lead",
            (_, after) => after.Granted, (before, _) => before with { Asked = Asked.SettledEarly })
        .Fault("a new interval on the first day", "INTERVAL-ONLY-AT-THE-DAY", "Give a new interval, signed by the lead",
            (before, after) => !after.Granted && !before.Extended, (_, joint) => joint with { Granted = true, Extended = true })
        .Fault("one new interval after another", "INTERVAL-ONCE", "Give a new interval, signed by the lead",
            (before, _) => before is { Extended: true, DayOver: true }, (_, joint) => joint with { Granted = true, DayOver = false })
        .Fault("a new interval settles the joint", "INTERVAL-RUNS-ANEW", "Give a new interval, signed by the lead",
            (_, after) => after.Granted, (_, joint) => joint with { Settled = true })
        .Fault("track is given over a due re-torque", "TRACK-WAITS", "Release",
            (before, after) => after.Asked == Asked.Track && before.First >= 0, (_, joint) => joint with { Granted = true })
        .Fault("road goes on after it lapsed", "ROAD-LAPSES", "Release",
            (before, after) => after.Asked == Asked.Road && before.Overdue, (_, joint) => joint with { Granted = true, Out = true })
        .Fault("the odometer is not compared with the last one", "ODOMETER-NEVER-BACK", "Release",
            (_, after) => after.Asked == Asked.RoadFromALowerOdometer, (_, joint) => joint with { Granted = true })
        .Fault("a release withdrawn before it was driven starts the re-torque", "NOT-DRIVEN-STARTS-NOTHING", "Withdraw the release",
            (before, _) => before is { Driven: false, Again: false }, (before, joint) => joint with { From = before.From })
        .Fault("a withdrawn release that was driven is forgotten", "DRIVEN-COUNTS-ON", "Withdraw the release",
            (before, _) => before.Driven, (_, joint) => joint with { From = -1 });
}
