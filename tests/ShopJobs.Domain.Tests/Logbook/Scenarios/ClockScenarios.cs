using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>Somebody set the clock of the machine: nothing that runs out by time runs out early, and no fact is refused.</summary>
public class ClockScenarios
{
    private static readonly DateTime Monday = CarAtWork.Start;
    private static readonly TimeSpan Day = TimeSpan.FromHours(24);

    /// <summary>A clock two days behind is corrected: the cure of an hour ago is not over.</summary>
    [Fact]
    public void A_clock_two_days_behind_that_is_corrected_ends_no_cure()
    {
        var pull = Entry();
        var shop = Stepped(ShopState.Empty, Monday.AddHours(1), Monday.AddHours(49));
        Assert.False(shop.HasPassed(Day, Monday, pull, Monday.AddHours(49)));
        Assert.False(shop.HasPassed(Day, Monday, pull, Monday.AddDays(9)));

        shop = Signed(shop, Monday.AddHours(49));
        Assert.False(shop.HasPassed(Day, Monday, pull, Monday.AddHours(71)));
        Assert.True(shop.HasPassed(Day, Monday, pull, Monday.AddHours(72)));
    }

    [Fact]
    public void A_cure_that_was_over_before_the_clock_was_set_stays_over() =>
        Assert.True(Stepped(ShopState.Empty, Monday.AddHours(25), Monday).HasPassed(Day, Monday, Entry(), Monday.AddHours(25)));

    [Fact]
    public void A_cure_that_began_in_the_doubt_waits_for_the_leads_signature_and_then_for_its_hours()
    {
        var shop = Stepped(ShopState.Empty, Monday, Monday.AddDays(2));
        var pull = Entry() with { Clock = shop.Number };
        Assert.False(shop.HasPassed(Day, Monday.AddDays(2), pull, Monday.AddDays(30)));

        // Set right again, and signed: it began two days earlier by this clock.
        shop = Signed(Stepped(shop, Monday.AddDays(2).AddHours(1), Monday.AddHours(1)), Monday.AddHours(1));
        Assert.False(shop.HasPassed(Day, Monday.AddDays(2), pull, Monday.AddHours(23)));
        Assert.True(shop.HasPassed(Day, Monday.AddDays(2), pull, Monday.AddHours(24)));
    }

    /// <summary>While the clock is behind, entries stand at the newest instant; a cure begun then counts from what the clock showed.</summary>
    [Fact]
    public void A_cure_begun_while_the_clock_was_behind_ends_when_its_hours_have_passed()
    {
        var newest = Monday.AddDays(2);
        var shop = Stepped(ShopState.Empty, newest, Monday);
        var pull = Entry() with { Clock = shop.Number, Ahead = TimeSpan.FromDays(2) };
        shop = Signed(shop, Monday.AddHours(1));
        Assert.False(shop.HasPassed(Day, newest, pull, Monday.AddHours(23)));
        Assert.True(shop.HasPassed(Day, newest, pull, Monday.AddHours(24)));
    }

    [Fact]
    public void A_pull_in_the_doubt_is_recorded_and_does_not_count_where_the_wrench_may_be_past_its_calibration()
    {
        var wheel = new WheelInShop();
        Assert.Empty(wheel.Pull(ShopState.Empty, 1).Problems);

        // The clock went back by a year: nobody knows whether the dial wrench, good for one, still is.
        var shop = Stepped(ShopState.Empty, Monday, Monday.AddYears(-1));
        Assert.Equal([HoldReason.CalibrationUnknown], wheel.Pull(shop, 1).Problems);
    }

    [Fact]
    public void A_pull_keeps_how_the_clock_went_when_it_was_made()
    {
        var wheel = new WheelInShop();
        Assert.Equal((null, null), (wheel.Pull(ShopState.Empty, 1).Clock, wheel.Pull(ShopState.Empty, 1).Ahead));
        var pull = wheel.Pull(Stepped(ShopState.Empty, Monday, Monday.AddHours(-3)), 1, TimeSpan.FromHours(3));
        Assert.Equal((1L, TimeSpan.FromHours(3)), (pull.Clock, pull.Ahead));
    }

    [Fact]
    public void A_condition_declared_before_the_clock_was_set_is_asked_again()
    {
        var register = TestRegister.With(1) with
        {
            Aspects = new Dictionary<string, ConditionAspect> { ["wheel"] = new(OfPlace: true, LastsHours: 12, EndsAt: []) },
        };
        var car = new CarAtWork(register: register);
        car.StartJob(TestProcedures.Wheels(1), TestRegister.Left);
        car.Do(TestPerson.Tess, new DeclareCondition([TestRegister.WheelUp]) { Places = [TestRegister.Left] });
        var said = car.State.LastSaid(car.As(TestPerson.Tess), "wheel", TestRegister.Left)!;
        Assert.Null(car.State.EndOf(car.As(TestPerson.Tess), said));

        var now = car.As(TestPerson.Tess) with { Shop = Stepped(ShopState.Empty, car.Now, car.Now.AddHours(-1)) };
        Assert.IsType<ConditionEnd.ByClock>(car.State.EndOf(now, said));
    }

    /// <summary>One entry stamped 2036: its days are reckoned by the clock as it goes now.</summary>
    [Fact]
    public void What_was_written_with_a_wrong_clock_is_reckoned_by_the_right_one()
    {
        var in2036 = Monday.AddYears(10);
        var shop = Stepped(ShopState.Empty, Monday, in2036);
        var release = Entry() with { Clock = shop.Number };
        shop = Signed(Stepped(shop, in2036.AddHours(1), Monday.AddHours(1)), Monday.AddHours(1));
        Assert.Equal(Monday, shop.OnThisClock(in2036, release));
    }

    [Fact]
    public void A_calibration_has_to_be_in_date_on_the_latest_day_that_it_may_be()
    {
        var today = DateOnly.FromDateTime(Monday);
        var back = Stepped(ShopState.Empty, Monday, Monday.AddDays(-3));
        Assert.Equal(today.AddDays(3), back.Latest(today));
        Assert.Equal(today, Signed(back, Monday.AddDays(-3)).Latest(today));
        Assert.Equal(today, Stepped(ShopState.Empty, Monday, Monday.AddDays(3)).Latest(today));
    }

    [Fact]
    public void Only_the_lead_sets_the_time_anew_of_what_he_was_shown_and_only_where_it_is_in_doubt()
    {
        var shop = Stepped(ShopState.Empty, Monday, Monday.AddDays(3));
        Assert.Equal(HoldReason.NoRight, Refused(shop, new SetClock("shown", 1), TestPerson.Tess));
        Assert.Equal(HoldReason.LookAgain, Refused(Stepped(shop, Monday.AddDays(3), Monday), new SetClock("shown", 1), TestPerson.Lee));
        Assert.Equal(HoldReason.ClockNotInDoubt, Refused(ShopState.Empty, new SetClock("shown", 0), TestPerson.Lee));
        Assert.Equal([1L], Assert.IsType<ClockSet>(Accepted(shop, new SetClock("shown", 1))).Steps);
    }

    [Fact]
    public void A_clock_that_drifts_was_not_set()
    {
        var anchor = ClockAnchor.First(ShopState.Empty, null, Monday, TimeSpan.Zero);
        for (var minute = 1; minute <= 600; minute++)
        {
            // One second a minute fast: ten minutes in ten hours, never two at one look.
            anchor = anchor.Look(ShopState.Empty, Monday.AddSeconds(61 * minute), TimeSpan.FromMinutes(minute));
        }

        Assert.Empty(anchor.Unsaid(ShopState.Empty));
    }

    [Fact]
    public void A_program_started_behind_the_newest_entry_sees_it_once()
    {
        var anchor = ClockAnchor.First(ShopState.Empty, Monday, Monday.AddDays(-2), TimeSpan.Zero).Look(ShopState.Empty, Monday.AddDays(-2), TimeSpan.Zero);
        var step = Assert.Single(anchor.Unsaid(ShopState.Empty));
        Assert.Equal((Monday, Monday.AddDays(-2)), (step.Was, step.Showed));
        var shop = ShopState.Empty.Apply(new Recorded(1, Monday, default, step));

        // Stopped and started again an hour on: entries still stand at the newest instant, and nothing new is to be said.
        var again = ClockAnchor.First(shop, Monday, Monday.AddDays(-2).AddHours(1), TimeSpan.Zero);
        Assert.Empty(again.Look(shop, Monday.AddDays(-2).AddHours(1), TimeSpan.Zero).Unsaid(shop));
    }

    [Fact]
    public void A_step_that_another_program_on_the_book_said_is_no_news()
    {
        var anchor = ClockAnchor.First(ShopState.Empty, null, Monday, TimeSpan.Zero);
        var shop = Stepped(ShopState.Empty, Monday.AddMinutes(5), Monday.AddDays(1));
        Assert.Empty(anchor.Look(shop, Monday.AddDays(1).AddMinutes(2), TimeSpan.FromMinutes(7)).Unsaid(shop));
    }

    private static ShopState Stepped(ShopState shop, DateTime was, DateTime showed) =>
        shop.Apply(new Recorded(shop.Number + 1, showed > was ? showed : was, TestPerson.Tess.Id, new ClockStepped(was, showed)));

    private static ShopState Signed(ShopState shop, DateTime at) =>
        shop.Apply(new Recorded(shop.Number + 1, at, TestPerson.Lee.Id, Accepted(shop, new SetClock("shown", shop.Number))));

    private static Entry Accepted(ShopState shop, SetClock command) =>
        Assert.Single(Assert.IsType<Verdict.Accepted>(shop.Decide(command, TestPerson.Lee.Rights)).Entries);

    private static HoldReason Refused(ShopState shop, SetClock command, TestPerson person) =>
        Assert.Single(Assert.IsType<Verdict.Refused>(shop.Decide(command, person.Rights)).Reasons).Reason;

    private static Entry Entry() => new ClockSet([], "an entry of any kind");

    private sealed class WheelInShop
    {
        private readonly CarAtWork car = new(register: TestRegister.With(2));
        private readonly JobId job;

        public WheelInShop()
        {
            job = car.StartJob(TestProcedures.Wheels(1, 2), TestRegister.Left);
            car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
            car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
            car.ByHand(TestPerson.Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left));
            car.Declare(TestRegister.WheelUp);
        }

        public TorqueRecorded Pull(ShopState shop, int nut, TimeSpan ahead = default)
        {
            var at = new JointPosition(TestRegister.Nut, TestRegister.Left, nut);
            var now = car.As(TestPerson.Tess) with { Shop = shop, Ahead = ahead };
            var verdict = car.State.Decide(
                new RecordTorque(job, "nuts", at, car.State.Of(at).Cycle, 1, nut - 1, TorqueKind.Reading, CarAtWork.NewtonMetres(50), TestTools.Dial, []), now);
            return Assert.IsType<TorqueRecorded>(Assert.Single(Assert.IsType<Verdict.Accepted>(verdict).Entries));
        }
    }
}
