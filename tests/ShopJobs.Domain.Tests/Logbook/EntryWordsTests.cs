using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

public sealed partial class EntryWordsTests
{
    private static readonly JobId Job = new(Guid.Parse("11111111-0000-4000-8000-000000000001"));
    private static readonly ToolId Wrench = new(Guid.Parse("22222222-0000-4000-8000-000000000002"));
    private static readonly PersonId Person = new(Guid.Parse("33333333-0000-4000-8000-000000000003"));
    private static readonly ContentDigest Text = new(new string('a', 64));
    private static readonly JointPosition Nut = new("wheel.nut", "front-left", 3);
    private static readonly EnteredTorque Final = new(110, TorqueUnit.NewtonMetre);

    private static readonly SpecificationInForce Spec = new(
        2, 1, 105, 115, 110, 0.5m, null, true, RiskClass.A, IfShort.BackOff, new ReTorque(false, 50, 100, null));

    private static readonly EntryNames Names = new(
        joint => $"wheel nut {joint.Place}", _ => "W7", _ => "P5", (_, step) => step, _ => "Jorn");

    private static readonly Entry[] Samples =
    [
        new JobStarted(Job, "P5", "2", "d", "r", ["front-left"]),
        new JobEnded(Job, "s"),
        new JobPutOnHold(Job, Text),
        new JobResumed(Job, [12], "s"),
        new JobCancelled(Job, Text, "s"),
        new JobTakenBack(Job, [Nut], Text, "s"),
        new RevisionAdopted(Job, "3", "d3", "r2", ["Final torque"], [7, 8], "s"),
        new CarConditionDeclared([new CarCondition("stand", "wheel-up")]),
        new StepFinished(Job, "Final torque", ["even"], [new MeasuredValue("gap", 0.05m, "mm")], [4], null),
        new StepConfirmed(Job, "Final torque", ["even"], [new MeasuredValue("gap", 0.05m, "mm")], [4], false, null, "s"),
        new ResultRecorded("alignment", [new MeasuredValue("toe", 1.5m, "mm")], ResultBasis.Measured, null, [], Job, null, []),
        new Opened([Nut], [], [new Undone(UndoneKind.Result, "alignment")], Job, Text),
        new FittedNew([Nut], Job, "G1", "cone nut", "4471"),
        new ThreadTreated([Nut], ThreadCondition.AntiSeize, "copper paste", "4471", Job),
        new HandTightened([Nut], Job, "G1", [Person], []),
        new TorqueRecorded(Job, "G1", Nut, 1, 2, 0, TorqueKind.SettingConfirmed, Final, Wrench, new DateOnly(2026, 3, 2), Spec, [], [5], []),
        new DeclaredFromPaper(Job, "G1", [Nut], 2, Person, Text, [HoldReason.DeclaredFromPaper]),
        new Settled([Nut], Job, "G1", true, 15, TorqueKind.SettingConfirmed, Final, Wrench, new DateOnly(2026, 3, 9), []),
        new Witnessed(Job, "G1", Nut.Joint, 2, [7, 8, 9], WitnessMethod.LookedAtMark, true, null, "s"),
        new Countersigned([7, 8], "s"),
        new PositionHeld([Nut], Text),
        new Decided(Nut, Disposition.Rework, [7], [new ToolDoubt(Wrench, 3)], Text, null, "s"),
        new WorkHeld(Text) { Job = Job, Step = "Final torque" },
        new WorkDecided(31, Disposition.Replace, Text, null, "s"),
        new Corrected(7, Final, Text),
        new CorrectionConfirmed(12, Text),
        new Released(ReleaseKind.Road, [Job], 12, 48210, 48310, new DateOnly(2026, 3, 30), null, "s"),
        new ReleaseUpheld(ReleaseKind.Road, 40, "s"),
        new ReleaseWithdrawn(ReleaseKind.Track, 40, false, Text, "s"),
        new RoadTestEnded(31, new OdometerReading(1019, DistanceUnit.Kilometre), null),
        new SummaryIssued(2, 1, Text, 40, "s"),
        new Arrived(new OdometerReading(31000, DistanceUnit.Mile), "LiftA", Text),
        new AsFoundRecorded("brakes", [new MeasuredValue("pad-front-left", 6.5m, "mm")]),
        new Left(WayOut.Driven, Text, null, 40, []),
        new CarMoved("LiftA", "Outside", [new SpokenAgainst(HoldReason.NotAtStage, Nut)]),
        new LookedOver([41], Text, "s"),
        new ReTorqueExtended([Nut], new DateOnly(2026, 3, 16), new OdometerReading(1020, DistanceUnit.Kilometre), Text, "s"),
        new PhotoTaken(Text, CarView.RearLeft) { Caption = Text },
        new LeftHalfDone(Job, "G1", Nut.Joint, 7, Text),
        new WorkTakenOver(Job, "G1", Nut.Joint, 7),
        new JointListChanged("four-stud", [new JointCount("wheel.nut", "front-left", 4)], null, Text),
        new FewerJointsAsked(null, [new JointCount("wheel.nut", "front-left", 4)], Text, "s"),
        new JointListKept(41, Text, "s"),
        new ToolEntered(Wrench, "W7", "S-71", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1, 4),
        new Calibrated(new DateOnly(2026, 1, 9), new DateOnly(2027, 1, 8), "Lab 12", [new CalibrationPoint(110, 100.1m)], [new CalibrationPoint(110, 110)]),
        new InstrumentEntered(Wrench, "S1", "S-1", InstrumentKind.Scales),
        new InstrumentChecked(new DateOnly(2026, 1, 9), new DateOnly(2027, 1, 8), "Lab 12", false, true),
        new Quarantined(Text),
        new Doubted(Text),
        new Cleared([3], Text),
        new CalibrationWithdrawn(2, Text),
        new ToolRetired(Text),
        new ToolBroughtBack(Text),
        new OwnerTold(new CarId(Guid.Parse("55555555-0000-4000-8000-000000000005")), Text),
        new ClockStepped(new DateTime(2026, 3, 4, 9, 0, 0, DateTimeKind.Utc), new DateTime(2026, 3, 2, 8, 0, 0, DateTimeKind.Utc)),
        new ClockSet([1], "s"),
    ];

    public static TheoryData<string> Kinds => [.. typeof(Entry).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Entry)) && !type.IsAbstract).Select(type => type.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_of_entry_has_a_plain_sentence_without_ids(string kind)
    {
        var sample = Assert.Single(Samples, entry => entry.GetType().Name == kind);

        var sentence = EntryWords.Of(sample, Names);

        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
        Assert.True(char.IsUpper(sentence[0]), sentence);
        Assert.DoesNotMatch(IdOrDigest(), sentence);
    }

    [Fact]
    public void What_a_trainee_signed_is_said_to_be_his() => Assert.Contains(
        "as a trainee", EntryWords.Of(new StepConfirmed(Job, "Final torque", [], [], [4], false, null, "s") { ByTrainee = true }, Names), StringComparison.Ordinal);

    [Fact]
    public void The_length_of_a_tool_is_said_where_it_was_entered()
    {
        var tool = Samples.OfType<ToolEntered>().Single();

        Assert.Equal("Entered W7, click, serial S-71, 40 to 200 N·m, graduation 1, within 4 %.", EntryWords.Of(tool, Names));
        Assert.Equal(
            "Entered W7, click, serial S-71, 40 to 200 N·m, graduation 1, within 4 %, 320.5 mm from hand to square.",
            EntryWords.Of(tool with { LengthMm = 320.5m }, Names));
    }

    [Fact]
    public void A_click_is_told_apart_from_a_reading()
    {
        var click = (TorqueRecorded)Samples.Single(entry => entry is TorqueRecorded);

        Assert.Equal(
            "Clicked at 110 N·m on wheel nut front-left 3, stage 2 of 2, with W7.", EntryWords.Of(click, Names));
        Assert.Equal(
            "Read 110 N·m on wheel nut front-left 3, stage 2 of 2, with W7.", EntryWords.Of(click with { Kind = TorqueKind.Reading }, Names));
        Assert.Equal(
            "Turned 91.5° on wheel nut front-left 3, stage 2 of 2, with W7.",
            EntryWords.Of(click with { Kind = TorqueKind.AngleTurned, Value = null, AngleDegrees = 91.5m }, Names));
    }

    [Fact]
    public void A_late_opening_says_what_it_opened_and_what_it_holds()
    {
        var other = Nut.Joint.At(1);
        var late = new Opened([other, Nut], [], [], Job, null) { Late = [Nut] };

        Assert.Equal("Opened wheel nut front-left 1; reported late and held: wheel nut front-left 3.", EntryWords.Of(late, Names));
        Assert.Equal(
            "Reported late as opened: wheel nut front-left 3; held until somebody has looked.",
            EntryWords.Of(late with { Positions = [Nut] }, Names));
    }

    [Fact]
    public void A_voided_pull_says_whether_it_was_pulled_and_a_withdrawn_release_whether_it_was_driven()
    {
        var voided = new Corrected(7, null, Text);
        var withdrawn = new ReleaseWithdrawn(ReleaseKind.Track, 40, false, Text, "s");

        Assert.Equal("Voided entry 7; it was pulled all the same.", EntryWords.Of(voided with { WasPulled = true }, Names));
        Assert.Equal("Voided entry 7; it was never pulled.", EntryWords.Of(voided with { WasPulled = false }, Names));
        Assert.EndsWith("the car was not driven under it.", EntryWords.Of(withdrawn, Names), StringComparison.Ordinal);
        Assert.EndsWith("the car was driven under it.", EntryWords.Of(withdrawn with { Driven = true }, Names), StringComparison.Ordinal);
    }

    [Fact]
    public void A_calibration_says_both_readings_of_each_point()
    {
        var words = EntryWords.Of(Samples.Single(entry => entry is Calibrated), Names);

        Assert.Contains("as found 110 read 100.1", words, StringComparison.Ordinal);
        Assert.Contains("as left 110 read 110", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Positions_are_said_joint_by_joint_with_runs_drawn_together()
    {
        JointPosition[] positions = [Nut.Joint.At(1), Nut.Joint.At(2), Nut.Joint.At(3), Nut.Joint.At(5), new("wheel.nut", "rear-left", 2)];

        Assert.Equal("wheel nut front-left 1 to 3, 5; wheel nut rear-left 2", Names.Positions(positions));
    }

    [Fact]
    public void A_visit_is_told_with_places_the_odometer_as_read_and_what_spoke_against_it()
    {
        var names = Names with { Place = key => key == "LiftA" ? "Lift A" : key };

        Assert.Equal(
            "The car came in, odometer 31,000 mi; it is at Lift A.", EntryWords.Of(Samples.OfType<Arrived>().Single(), names));
        Assert.Equal(
            "The car came in, odometer not read; it is at Lift A.", EntryWords.Of(new Arrived(null, "LiftA", Text) { OdometerWhy = Text }, names));
        Assert.Equal(
            "Recorded that the car was moved from Lift A to Outside, though it was not to be moved: wheel nut front-left 3.",
            EntryWords.Of(Samples.OfType<CarMoved>().Single() with { Why = Text }, names));
        Assert.Equal("The car left, driven under the road release of entry 40.", EntryWords.Of(Samples.OfType<Left>().Single(), names));
        Assert.Equal(
            "Recorded that the car left, driven without a road release, though it was not to leave: There is no valid release to the road.",
            EntryWords.Of(new Left(WayOut.Driven, Text, null, null, [new SpokenAgainst(HoldReason.NotReleased, null)]) { Why = Text }, names));
    }

    [Fact]
    public void What_was_found_is_told_with_what_was_seen_or_that_it_is_unknown_and_how_late()
    {
        var found = Samples.OfType<AsFoundRecorded>().Single();

        Assert.Equal("As found, brakes: pad front left 6.5 mm.", EntryWords.Of(found, Names));
        Assert.Equal("As found, brakes: in words.", EntryWords.Of(new AsFoundRecorded("brakes", []) { Words = Text }, Names));
        Assert.Equal(
            "As found, brakes, written down after entry 12 had opened it: unknown, and the customer was told.",
            EntryWords.Of(new AsFoundRecorded("brakes", []) { Told = Text, After = 12 }, Names));
        Assert.Equal(
            "Opened wheel nut front-left 3; nobody had written down how it was found, and that is lost: wheels.",
            EntryWords.Of(new Opened([Nut], [], [], null, null) { Unseen = ["wheels"] }, Names));
        Assert.EndsWith("it is at LiftA. Fuel: 3 of 8.", EntryWords.Of(new Arrived(null, "LiftA", Text) { OdometerWhy = Text, FuelEighths = 3 }, Names), StringComparison.Ordinal);
    }

    [Fact]
    public void Distances_are_told_in_the_unit_of_the_car()
    {
        var released = Samples.OfType<Released>().Single();

        Assert.Contains("at 48,210 km; expires at 48,310 km or after", EntryWords.Of(released, Names), StringComparison.Ordinal);
        Assert.Contains("at 29,956.3 mi; expires at 30,018.4 mi or after", EntryWords.Of(released, Names with { Distance = DistanceUnit.Mile }), StringComparison.Ordinal);
        Assert.Contains(
            "at 29,956 mi;", EntryWords.Of(released with { Odometer = new OdometerReading(29956, DistanceUnit.Mile) }, Names with { Distance = DistanceUnit.Mile }), StringComparison.Ordinal);
    }

    [GeneratedRegex("[0-9a-f]{8}-[0-9a-f]{4}|a{64}")]
    private static partial Regex IdOrDigest();
}
