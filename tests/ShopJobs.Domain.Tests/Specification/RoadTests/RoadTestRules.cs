using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.RoadTests;

/// <summary>The drive that a result needs, and what may be missing for it.</summary>
internal static class RoadTestRules
{
    private const string Missing =
        "only results which the register marks after a drive (bed-in, a road check), and the steps that only record them, may be missing";

    public static RuleBook<TestedCar> Book() => Faults(Courses(
        new RuleBook<TestedCar>("Road test", TestedCar.Start, car => car.ToString())
            .Action("Ask for", TestedCar.All, (car, _) => !car.Out, (car, asked) => car.Ask(asked))
            .Action("Drive", car => car is { Out: true, Driven: false }, car => car.Drive())
            .Action("Return, or the day ends", car => car.Out, car => car.Comes())
            .Action("Record the bed-in", car => car is { Driven: true, BedIn: false }, car => car.Bed())
            .Action("Record the alignment", car => car is { Aligned: false, JointsCount: true, Out: false }, car => car.Align())
            .Action("Open a joint", car => car.JointsCount, car => car.OpenJoint())
            .Action("Bring it to torque", car => !car.JointsCount, car => car.Tighten())
            .On("Ask for", "road test", "JOINTS-AS-FOR-ROAD", "every joint counts as for road",
                (_, after) => after.Granted, (before, _) => before.JointsCount)
            .On("Ask for", "road test", "ONLY-AFTER-A-DRIVE-MISSING", Missing,
                (_, after) => after is { Asked: Asked.RoadTest, Granted: true }, (before, _) => before.Aligned)
            .On("Ask for", "road test", "BED-IN-MAY-BE-MISSING", Missing,
                (before, after) => after.Asked == Asked.RoadTest && before is { JointsCount: true, Aligned: true, BedIn: false }, (_, after) => after.Granted)
            .On("Ask for", "road test", "NAMED-DRIVER", "Road test is a release beside move, road and track: a named driver and a distance",
                (_, after) => after.Asked == Asked.RoadTestOfNobody, (_, after) => !after.Granted)
            .On("Return, or the day ends", "road test", "ENDS-AT-RETURN", "it ends at return or with the day",
                (_, _) => true, (_, after) => !after.Out)
            .On("Ask for", "road test", "HOLDS-TRACK", "They hold track",
                (_, after) => after is { Asked: Asked.Track or Asked.TrackToldInWriting, Granted: true }, (before, _) => before.BedIn)
            .On("Ask for", "road test", "HOLDS-ROAD", "They hold track, and road unless the customer was told in writing",
                (_, after) => after is { Asked: Asked.Road, Granted: true }, (before, _) => before.BedIn)
            .On("Open a joint", "12", "OPENING-ENDS", "Opening ends a release for good", (before, _) => before.Out, (_, after) => !after.Out)));

    private static RuleBook<TestedCar> Courses(RuleBook<TestedCar> book) => book
        .Ends("road test", "BEDDED-BY-ROAD-TEST", "P4 with bed-in by a road test", car => car is { Asked: Asked.Track, Granted: true })
        .Ends("road test", "TOLD-IN-WRITING", "The customer beds the pads himself and was told in writing", car => car is { Asked: Asked.RoadToldInWriting, Granted: true, BedIn: false });

    private static RuleBook<TestedCar> Faults(RuleBook<TestedCar> book) => book
        .Fault("a road test over an open joint", "JOINTS-AS-FOR-ROAD", "Ask for",
            (before, _) => !before.JointsCount, (_, car) => car with { Granted = true })
        .Fault("a road test without an alignment", "ONLY-AFTER-A-DRIVE-MISSING", "Ask for",
            (before, after) => after.Asked == Asked.RoadTest && before is { JointsCount: true, Aligned: false }, (_, car) => car with { Granted = true, Out = true })
        .Fault("bed-in needs the road release that waits for bed-in", "BED-IN-MAY-BE-MISSING", "Ask for",
            (_, after) => after is { Asked: Asked.RoadTest, Granted: true }, (before, _) => before with { Asked = Asked.RoadTest, Granted = false })
        .Fault("anybody drives it", "NAMED-DRIVER", "Ask for",
            (before, after) => after.Asked == Asked.RoadTestOfNobody && before is { JointsCount: true, Aligned: true }, (_, car) => car with { Granted = true, Out = true })
        .Fault("a road test never ends", "ENDS-AT-RETURN", "Return, or the day ends", (_, _) => true, (_, car) => car with { Out = true })
        .Fault("track on pads that are not bedded", "HOLDS-TRACK", "Ask for",
            (before, after) => after.Asked == Asked.TrackToldInWriting && before.JointsCount, (_, car) => car with { Granted = true })
        .Fault("a road release with unbedded pads nobody was told of", "HOLDS-ROAD", "Ask for",
            (before, after) => after.Asked == Asked.Road && before is { JointsCount: true, Aligned: true }, (_, car) => car with { Granted = true })
        .Fault("a road test goes on with an opened joint", "OPENING-ENDS", "Open a joint", (before, _) => before.Out, (_, car) => car with { Out = true });
}
