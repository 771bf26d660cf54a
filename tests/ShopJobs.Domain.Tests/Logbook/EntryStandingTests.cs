using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using static ShopJobs.Domain.Tests.Logbook.ToolBook;

namespace ShopJobs.Domain.Tests.Logbook;

public sealed class EntryStandingTests
{
    private static readonly ContentDigest Text = new(new string('b', 64));

    [Fact]
    public void A_record_stands_until_something_happens_to_it()
    {
        var car = Car(Noon, at => Pull(1, at));

        Assert.Equal(EntryStanding.Stands, car.State.StandingOf(car.Entries[1]));
    }

    [Fact]
    public void A_record_of_an_opened_position_is_struck()
    {
        var car = Car(Noon, at => Pull(1, at), _ => Open(1));

        Assert.True(car.State.StandingOf(car.Entries[1]).Struck);
    }

    [Fact]
    public void A_void_says_which_entry_voided_it_and_that_it_waits()
    {
        var car = Car(Noon, at => Pull(1, at), _ => Void(2));

        Assert.Equal(
            new EntryStanding(true, "void by entry 3; waits for a second person to confirm it"), car.State.StandingOf(car.Entries[1]));
    }

    [Fact]
    public void A_restated_value_stays_readable_and_says_the_new_one()
    {
        var car = Car(
            Noon,
            at => Pull(1, at),
            _ => new Corrected(2, new EnteredTorque(111, TorqueUnit.NewtonMetre), Text),
            _ => new CorrectionConfirmed(3, Text));

        Assert.Equal(
            new EntryStanding(false, "corrected to 111 N·m by entry 3, confirmed by a second person"), car.State.StandingOf(car.Entries[1]));
    }

    [Fact]
    public void A_release_is_ended_by_an_opening()
    {
        var car = Car(
            Noon,
            at => Pull(1, at),
            _ => new Released(Domain.Procedures.ReleaseKind.Road, [], 3, 100, null, null, null, "s"),
            _ => Open(1));

        Assert.Equal(new EntryStanding(true, "ended by entry 4"), car.State.StandingOf(car.Entries[2]));
    }

    [Fact]
    public void A_lifted_doubt_says_so()
    {
        var doubt = new Recorded(3, Noon, Person, Doubted(Noon).Entry);

        Assert.Null(Tool(Calibrated(new DateOnly(2026, 1, 9), 0, 1), Doubted(Noon)).StandingOf(doubt).Words);
        Assert.Equal(
            "lifted since",
            Tool(Calibrated(new DateOnly(2026, 1, 9), 0, 1), Doubted(Noon), Cleared(Noon.AddDays(1), 3)).StandingOf(doubt).Words);
    }
}
