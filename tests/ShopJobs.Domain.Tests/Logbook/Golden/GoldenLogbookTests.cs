using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Golden;

/// <summary>
/// A car's and a tool's logbook as an earlier program wrote them: the alignment, a brake bolt with a mistyped reading, a wheel,
/// a road release, four of five nuts re-torqued, the summary; then a strut nut held, another opened, and the wrench dropped.
/// </summary>
public class GoldenLogbookTests
{
    private static readonly JointPosition Bolt = new(TestRegister.BrakeBolt, TestRegister.Front, 1);
    private readonly List<Recorded> car = Read("car.txt");
    private readonly List<Recorded> tool = Read("tool.txt");

    private CarState Car => car.Aggregate(CarState.Empty, (state, next) => state.Apply(next));

    private ToolState Dial => tool.Aggregate(ToolState.Empty, (state, next) => state.Apply(next));

    [Theory]
    [InlineData("car.txt", LogbookKind.Car)]
    [InlineData("tool.txt", LogbookKind.Tool)]
    public void Envelopes_open_are_written_again_as_the_same_bytes_and_chain_to_the_stored_hash(string name, LogbookKind kind)
    {
        var (envelopes, head) = GoldenFiles.Book(name);
        var hash = EntryHash.BeforeFirst;
        foreach (var bytes in envelopes)
        {
            var envelope = EnvelopeCodec.Decode(bytes);
            Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(EnvelopeCodec.Encode(envelope)));
            Assert.Equal(kind, envelope.Logbook.Kind);
            hash = hash.Next(bytes);
        }

        Assert.Equal(head, hash);
        Assert.Equal(Enumerable.Range(1, envelopes.Count).Select(number => (long)number), Read(name).Select(recorded => recorded.Number));
    }

    [Fact]
    public void Every_kind_that_an_earlier_program_wrote_is_in_it()
    {
        var written = car.Concat(tool).Select(recorded => EntryCodec.Encode(recorded.Entry).Kind).ToHashSet();
        Assert.Equal(
            [
                "arrived", "as-found-recorded", "calibration-withdrawn", "cleared", "clock-set", "clock-stepped", "countersigned", "declared-from-paper", "fewer-joints-asked", "instrument-checked",
                "instrument-entered", "job-cancelled", "job-ended", "job-on-hold", "job-resumed", "job-taken-back", "joint-list-changed", "joint-list-kept", "left", "left-half-done", "looked-over", "moved", "owner-told", "photo-taken", "re-torque-extended",
                "release-upheld", "release-withdrawn", "revision-adopted", "road-test-ended", "step-finished", "taken-over", "thread-treated", "tool-brought-back", "tool-retired", "work-decided", "work-held",
            ],
            EntryCodec.Kinds.Where(kind => !written.Contains(kind)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Wheel_is_settled_but_for_the_nut_that_is_still_due()
    {
        var shows = Enumerable.Range(1, 5).Select(number => Car.StateOf(new JointPosition(TestRegister.Nut, TestRegister.Left, number), Tool));
        Assert.Equal([.. Enumerable.Repeat(PositionState.Settled, 4), PositionState.Due], shows);
    }

    [Fact]
    public void Mistyped_bolt_was_used_as_is_and_is_in_doubt_since_its_wrench_was_dropped()
    {
        Assert.Equal(PositionState.AtTorque, Car.StateOf(Bolt, _ => ToolState.Empty));
        Assert.Equal(PositionState.Doubted, Car.StateOf(Bolt, Tool));
        var pull = Assert.Single(Car.Of(Bolt).Pulls);
        Assert.Equal(("88 N·m", "80 N·m"), (pull.Fact.Value.ToString(), pull.Value.ToString()));
        Assert.True(pull.CorrectionConfirmed);
        Assert.NotNull(pull.AcceptedBy);
    }

    [Fact]
    public void Joints_touched_last_are_held_and_open_and_all_others_as_found()
    {
        Assert.Equal(PositionState.Held, Car.StateOf(new JointPosition(TestRegister.StrutTop, TestRegister.Left, 2), Tool));
        Assert.Equal(PositionState.Open, Car.StateOf(new JointPosition(TestRegister.StrutTop, TestRegister.Right, 1), Tool));
        Assert.Equal(8, Car.Positions.Values.Count(book => !book.IsAsFound || !book.Holds.IsEmpty));
    }

    /// <summary>Opening, or a pull other than a re-torque, ends a release for good. Anything else by which it could not be given now suspends it.</summary>
    [Fact]
    public void Both_jobs_ended_with_the_road_release_which_the_hold_suspended_and_the_opening_ended()
    {
        var release = Car.Releases[ReleaseKind.Road];
        Assert.Equal(Car.Jobs.Keys.ToHashSet(), release.Fact.Closes.ToHashSet());
        Assert.Empty(Car.RunningJobs);
        Assert.Equal((1000m, 1100m), (release.Fact.OdometerKm, release.Fact.LapsesAtKm));
        Assert.IsType<PositionHeld>(car[(int)release.SuspendedBy - 1].Entry);
        Assert.IsType<Opened>(car[(int)release.VoidBy - 1].Entry);
    }

    [Fact]
    public void Alignment_is_void_since_the_strut_was_opened_and_the_bleed_stands()
    {
        Assert.Equal(["alignment"], Car.Undone.Keys);
        Assert.Equal(Car.Number, Car.Results["alignment"].VoidBy);
        Assert.Equal(0, Car.Results["bleed"].VoidBy);
    }

    [Fact]
    public void Summary_was_issued_once_and_says_no_more_what_is_so() =>
        Assert.Equal((1, true), (Car.Summaries.Single().Fact.Version, Car.Summaries.Single().SupersededBy > 0));

    [Fact]
    public void Wrench_is_out_of_use_with_one_doubt_from_its_last_good_calibration()
    {
        var doubt = Assert.Single(Dial.Doubts);
        Assert.Equal((4, 4), (doubt.Number, Dial.OutOfUseBy));
        Assert.Equal(Dial.LastGood!.Date, doubt.From);
    }

    private ToolState Tool(ToolId id) => id == TestTools.Dial ? Dial : ToolState.Empty;

    private static List<Recorded> Read(string name) =>
    [
        .. GoldenFiles.Book(name).Envelopes.Select(bytes => EnvelopeCodec.Decode(bytes)).Select(envelope => new Recorded(
            envelope.Number, envelope.At, envelope.Person, EntryCodec.Decode(envelope.Kind, envelope.Version, envelope.Payload.Span))),
    ];
}
