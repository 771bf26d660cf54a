using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Model;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>Runs moves on one car and compares the product with the model after each command.</summary>
internal sealed partial class CarHistory
{
    private static readonly IReadOnlyList<JointPosition> Positions = [.. TestRegister.With(2).Kinds.Values.SelectMany(kind => kind.AllPositions())];
    private readonly Dictionary<JobId, JobReading> readings = [];
    private readonly List<string> told = [];
    private readonly ToolShelf shelf = new(CarAtWork.Start);
    private readonly Tally? tally;
    private readonly Dictionary<ToolId, List<Recorded>> tools;
    private TrueClock clock = TrueClock.Trusted;
    private Ledger? ledger;

    private CarHistory(int first, HoldRules rules, Tally? tally, bool compared)
    {
        Car = new CarAtWork(2, shelf, rules, Shop.Register(first)) { Ties = Shop.Ties(first) };
        this.tally = tally;
        tools = shelf.Logbooks.ToDictionary(book => book.Key, book => book.Value.ToList());
        // Here and there the tools have done nearly all they may on other cars.
        Car.PulledElsewhere = first % 8 == 5 ? 4997 : 0;
        ledger = !compared ? null : new Ledger(Car.Register, tools, readings, [], clock);
    }

    public CarAtWork Car { get; }

    /// <summary>Everything that was done, for a person who reads a failure.</summary>
    public string Told => string.Join(Environment.NewLine, told);

    /// <summary>Runs a history; the first difference in words, or null.</summary>
    public static string? Run((int First, Move[] Moves) history, HoldRules? rules = null, Tally? tally = null)
    {
        var run = new CarHistory(history.First, rules ?? HoldRules.Standard, tally, compared: true);
        return run.Play(history) is { } difference ? $"{difference}{Environment.NewLine}{run.Told}" : null;
    }

    /// <summary>Runs a history on the product alone; the car as it is after it.</summary>
    public static CarAtWork Scout((int First, Move[] Moves) history, HoldRules rules)
    {
        var run = new CarHistory(history.First, rules, null, compared: false);
        run.Play(history);
        return run.Car;
    }

    public string? Play((int First, Move[] Moves) history)
    {
        var begin = new Move(MoveKind.Start, history.First, 1, 0);
        return Make(begin)
            ?? (history.First % 2 == 0 ? Make(begin with { A = Choices.Beside(history.First) }) : null)
            ?? history.Moves.Select(Make).FirstOrDefault(difference => difference is not null);
    }

    public string? Make(Move move)
    {
        switch (move.Kind)
        {
            case not (MoveKind.Release or MoveKind.Summary or MoveKind.Declare or MoveKind.Uphold or MoveKind.Withdraw) when Car.Register.Kinds.Count == 0:
                return null;
            case MoveKind.Stale:
                return Stale(move);
            case MoveKind.Unentitled:
                return Running(move.A) is { } busy && Guide.Next(Car, busy, move) is (_, RecordTorque unentitled)
                    ? Give(move.C % 2 == 0 ? TestPerson.Nobody : TestPerson.Tia, unentitled) ?? Make(move with { Kind = MoveKind.Countersign })
                    : null;
            case MoveKind.Trained:
                return Running(move.A) is { } learnt && Guide.Next(Car, learnt, move) is (_, ConfirmStep { NotApplicable: false } sign)
                    ? Give(TestPerson.Tia, sign) ?? (move.C % 3 == 0 ? GoOn(move) : Make(move with { Kind = MoveKind.Countersign }))
                    : null;
            case MoveKind.Rest:
                return Rest(move);
            case MoveKind.End when move.C % 6 == 0:
                return EndIt(move);
            case MoveKind.Suspended:
                return Suspended(move);
            case MoveKind.Trailered:
                return Trailered(move);
            case MoveKind.MovedOpen:
                return MovedOpen(move);
            case MoveKind.Misweighed:
                return Misweighed(move);
            case MoveKind.SignIn:
                return SignIn(Choices.Person(move.A));
            case MoveKind.InOneGo:
                return InOneGo(move);
            case MoveKind.Slow:
                return GoOnFor(6, move, until: static entry => entry is HandTightened) ?? Pause() ?? GoOnFor(1, move);
            case MoveKind.Uncured:
                return Uncured(move);
            case MoveKind.GoOn:
                return GoOnFor(move.A % 9 == 0 ? 24 : 1 + (move.A % 5), move);
            case MoveKind.GoOnWrongly:
                return Running(move.A) is { } job && Guide.Next(Car, job, move) is var (worker, right)
                    ? Give(move.C % 8 == 0 ? TestPerson.Nobody : worker, Mistakes.Spoilt(Car, right, move with { A = move.C }))
                    : null;
            case MoveKind.Short:
                return Running(move.A) is { } at && Guide.Next(Car, at, move) is ({ } puller, RecordTorque pull)
                    ? Give(puller, Mistakes.Short(Car, pull)) ?? Give(puller, pull)
                    : null;
            case MoveKind.Start:
                var (procedure, places) = Choices.Procedure(move.A);
                return Give(move.B % 5 == 0 ? TestPerson.Tess : TestPerson.Lee, Car.ToStart(new JobId(new Guid(readings.Count + 1, 3, 0, new byte[8])), procedure, places));
            case MoveKind.Tool:
                var (tool, entry) = Choices.ToolEntry(Car, move);
                Car.TellTool(tool, entry);
                told.Add($"    tool {tool.Value.ToString()[..8]}: {entry}");
                tally?.Count(entry);
                clock = clock.Written(Car.True);
                tools.TryAdd(tool, []);
                tools[tool].Add(new Recorded(tools[tool].Count + 1, Car.True, default, entry));
                ledger = ledger?.Anew(clock);
                return Compare();
            case MoveKind.Clock:
                return SetClock(move);
            case MoveKind.Wait:
                Car.Wait(move.A % 5 == 0 ? TimeSpan.FromDays(300) : TimeSpan.FromHours(25));
                return null;
            default:
                return Choices.Of(Car, move) is { } command ? Give(Choices.Signer(Car, command, move), command) : null;
        }
    }

    // By whole days, so that a day is right or wrong as a whole.
    private string? SetClock(Move move)
    {
        if (move.A % 3 != 0)
        {
            TimeSpan[] by = [TimeSpan.FromDays(2), -TimeSpan.FromDays(2), TimeSpan.FromDays(300), -TimeSpan.FromDays(300)];
            Car.SetClock(by[move.B % by.Length]);
            told.Add($"    the clock is set by {by[move.B % by.Length].TotalDays} days");
            clock = clock.Set(by[move.B % by.Length], Car.True, Car.State.Number);
            ledger = ledger?.Anew(clock);
            return Compare();
        }

        var signer = move.B % 4 == 0 ? TestPerson.Tess : TestPerson.Lee;
        clock = clock.Set(-clock.Off, Car.True + TimeSpan.FromMinutes(1), Car.State.Number);
        var said = Car.Clock.Steps.Count;
        var verdict = Car.SignClock(signer);
        foreach (var step in Car.Clock.Steps.Skip(said))
        {
            tally?.Count(new ClockStepped(step.Was, step.Showed));
        }

        told.Add($"    {signer} signs the time -> {Describe(verdict)}");
        tally?.Count(verdict);
        var expected = clock.Against(signer.Rights);
        clock = expected is null ? clock.Signed(Car.True) : clock;
        ledger = ledger?.Anew(clock);
        var found = (verdict as Verdict.Refused)?.Reasons[0].Reason;
        return found == expected ? Compare() : $"the time is refused for {found}, the model says {expected}";
    }

    /// <summary>Gives one command to product and model.</summary>
    public string? Give(TestPerson person, Command command)
    {
        var at = Car.True + TimeSpan.FromMinutes(1);
        if (command is StartJob start)
        {
            readings.TryAdd(start.Job, new JobReading(start.Job, start.Procedure, Car.Register, start.Places));
        }

        var started = command is StartJob { Job: var id } && Car.State.Jobs.ContainsKey(id);
        var before = Car.Book.Count;
        if (ledger is not null)
        {
            var pulls = Choices.Tools.ToDictionary(tool => tool, tool => Car.As(person).PullsWith(tool));
            ledger.PullsWith = tool => pulls.GetValueOrDefault(tool);
            ledger.Session = Car.SessionOf(person);
        }

        var expected = ledger?.RefusalsOf(person.Id, person.Rights, Car.As(person).TiedTo, command, at);
        var verdict = Car.Try(person, command);
        tally?.Count(verdict);
        if (command is StartJob { Job: var refused } && verdict is Verdict.Refused && !started)
        {
            readings.Remove(refused);
        }

        if (ledger is null || expected is null)
        {
            return null;
        }

        told.Add($"    {person} {CommandWords.Of(command)} -> {Describe(verdict)}");
        if (verdict is Verdict.Refused no)
        {
            var found = no.Reasons.Select(Of).ToHashSet();
            return found.SetEquals(expected) ? null : $"refused for [{string.Join(", ", found)}], the model says [{string.Join(", ", expected)}]";
        }

        if (expected.Count > 0)
        {
            return $"recorded, the model refuses for [{string.Join(", ", expected)}]";
        }

        var written = ledger.LinesOf(command, Car.Book[before..], at, clock.Day(at), person.Rights);
        clock = clock.Written(at);
        ledger = ledger.With(written);
        return written.Select(line => Ledger.Difference(command, line)).FirstOrDefault(difference => difference is not null) ?? Compare();
    }

    // Given where none stands; then a joint is held, decided as it is, and the lead looks again.
    private string? Suspended(Move move)
    {
        var given = Choices.Standing(Car) is null
            ? Give(TestPerson.Lee, CarWork.To(Choices.Kinds[move.C % Choices.Kinds.Length], (Car.State.Odometer ?? 1000) + 10, accepted: true) with { Driver = TestPerson.Tess.Id, DistanceKm = 20 })
            : null;
        var held = Positions[move.A % Positions.Count];
        return given ?? (Choices.Standing(Car) is { } standing
            ? Give(TestPerson.Tess, new HoldPositions([held], CarAtWork.Reason))
                ?? (move.B % 4 == 0 ? null : Give(TestPerson.Lee, CarWork.Decision(held, Disposition.UseAsIs, accepted: true)))
                ?? Give(TestPerson.Lee, new UpholdRelease(standing, CarAtWork.Shown))
            : null);
    }

    // Made and let out where it is not, it stands until its last day; then the lead gives a new interval, now and then a second one.
    private string? Trailered(Move move)
    {
        var given = Choices.Standing(Car) is null
            ? GoOnFor(30, move) ?? Give(TestPerson.Lee, CarWork.To(ReleaseKind.Road, Car.State.Odometer ?? 1000, accepted: true))
            : null;
        var early = move.B % 3 == 0 ? Make(move with { Kind = MoveKind.Settle }) : null;
        Car.Wait(TimeSpan.FromDays(13 + (move.C % 3)));
        return given ?? early ?? Give(Choices.Person(move.A), Choices.Interval(Car, move)) ?? Give(TestPerson.Lee, Choices.Interval(Car, move))
            ?? Give(TestPerson.Lee, CarWork.To(ReleaseKind.Road, Car.State.Odometer ?? 1000));
    }

    private string? MovedOpen(Move move)
    {
        var here = Car.State.Visit is { IsOpen: false } ? Give(TestPerson.Lee, new ComeIn(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason }) : null;
        return here
            ?? Give(TestPerson.Tess, new OpenPositions([Positions[move.A % Positions.Count]], null, null))
            ?? Give(TestPerson.Tess, new ReportMoved("LiftA", "Floor", CarAtWork.Reason))
            ?? (move.B % 3 == 0 ? Give(TestPerson.Tess, new LookOver(CarAtWork.Reason, CarAtWork.Shown)) : null)
            ?? (move.B % 4 == 0 ? null : Give(TestPerson.Lee, new LookOver(CarAtWork.Reason, CarAtWork.Shown)))
            ?? Give(TestPerson.Lee, CarWork.To(Choices.Kinds[move.C % Choices.Kinds.Length], Car.State.Odometer ?? 1000, accepted: true));
    }

    // Weighed with scales that measure right, which are then doubted or found wrong; now and then they are cleared, or measure right again.
    private string? Misweighed(Move move)
    {
        const int doubted = 0, foundWrong = 1, foundRight = 3, cleared = 5;
        string? Scales(int say) => Make(new Move(MoveKind.Tool, 6, say, 0));

        var weighed = new RecordResult("corner-weights", [new MeasuredValue("value", move.B, "mm")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown)
        {
            Tool = TestTools.Scales,
        };
        return Scales(cleared) ?? Scales(foundRight)
            ?? Give(TestPerson.Lee, weighed)
            ?? Scales(move.A % 2 == 0 ? doubted : foundWrong)
            ?? (move.B % 4 == 0 ? Scales(move.C % 2 == 0 ? cleared : foundRight) : null)
            ?? Give(TestPerson.Lee, CarWork.To(Choices.Kinds[move.C % Choices.Kinds.Length], Car.State.Odometer ?? 1000, accepted: true));
    }

    // Even numbers: of two steps that may be done the first, which drives them.
    private string? Uncured(Move move)
    {
        var running = AtWork;
        var studs = running.FindIndex(job => Car.Placed(job).Groups.Any(group => group.Group.Key == TestRegister.Stud));
        return studs < 0
            ? null
            : Give(TestPerson.Tess, new OpenPositions(Car.Positions(TestRegister.Stud, TestRegister.Left), running[studs].Id, null))
                ?? Enumerable.Range(0, 12).Select(i => GoOn(new Move(move.Kind, studs + (running.Count * move.A), 2 * (move.B + i), move.C / (i + 1))))
                    .FirstOrDefault(difference => difference is not null)
                ?? Give(TestPerson.Lee, CarWork.To(ReleaseKind.Road, (Car.State.Odometer ?? 1000) + 10, accepted: true));
    }

    private string? SignIn(TestPerson person)
    {
        Car.SignInAnew(person);
        told.Add($"    {person} signs in again");
        return null;
    }

    // One pair of hands does step after step, says that each is done, and signs them with one PIN. Now and then something comes between.
    private string? InOneGo(Move move)
    {
        var hands = move.C % 4 == 0 ? TestPerson.Theo : TestPerson.Tess;
        StepInstance? last = null;
        for (var i = 0; i < 14 && Running(move.A) is { } job && Guide.NextInOneGo(Car, job, hands, move with { B = move.B + (move.C % 5 == 0 ? i : 0) }) is var (worker, command); i++)
        {
            var finish = command is ConfirmStep sign && move.C % 11 > 0 ? new FinishStep(sign.Job, sign.Step, sign.Ticks, sign.Values) : null;
            last = finish is not null ? Car.Placed(job).Step(finish.Step) : last;
            var before = Car.Last;
            var difference = Give(command is Witness or DecideHold ? worker : (move.B + i) % 17 == 0 ? TestPerson.Theo : hands, finish ?? command)
                ?? ((move.B + i) % 13 == 0 ? SignIn(hands) : null)
                ?? ((move.A + i) % 11 == 0 ? Make(move with { Kind = MoveKind.Correct }) : null)
                ?? ((move.A + i) % 19 == 0 ? Make(move with { Kind = MoveKind.Open }) : null);
            if (difference is not null)
            {
                return difference;
            }

            if (Car.Last == before)
            {
                break;
            }
        }

        return last is not null && Running(move.A) is { } at && Choices.SignTogether(Car, at, hands, last, move) is { } together
            ? Give(move.B % 9 == 0 ? TestPerson.Theo : hands, together)
            : null;
    }

    private string? Pause()
    {
        Car.Wait(TimeSpan.FromHours(3));
        return null;
    }

    // Something is drawn to be signed, something else happens, then it is signed as it was drawn.
    private string? Stale(Move move)
    {
        MoveKind[] drawn = [MoveKind.Look, MoveKind.Sign, MoveKind.Decide, MoveKind.Correct, MoveKind.Confirm, MoveKind.Release, MoveKind.Settle, MoveKind.Countersign, MoveKind.Uphold];
        MoveKind[] between = [MoveKind.GoOn, MoveKind.Correct, MoveKind.Open, MoveKind.Pull, MoveKind.Hold, MoveKind.Tool, MoveKind.Confirm];
        return Choices.Of(Car, move with { Kind = drawn[move.A % drawn.Length] }) is SignedCommand command && Car.Shows(command) is var shown
            ? Make(move with { Kind = between[move.B % between.Length], A = move.C, C = move.A }) ?? Give(Choices.Signer(Car, shown, move), shown)
            : null;
    }

    // Goes on until it is told no, or nothing is left to do.
    private string? GoOnFor(int times, Move move, Func<Entry, bool>? until = null)
    {
        for (var i = 0; i < times; i++)
        {
            var before = Car.Last;
            if (GoOn(move with { B = move.B + i, C = move.C / (i + 1) }) is { } difference)
            {
                return difference;
            }

            if (Car.Last == before || Car.Book[^1].Entry is Released || until?.Invoke(Car.Book[^1].Entry) == true)
            {
                return null;
            }
        }

        return null;
    }

    private string? GoOn(Move move)
    {
        if (Running(move.A) is not { } job || Guide.Next(Car, job, move) is not var (worker, command))
        {
            return Give(TestPerson.Lee, CarWork.To(
                move.A % 4 == 0 ? ReleaseKind.Track : ReleaseKind.Road, (Car.State.Odometer ?? 1000) + (move.C % 3 * 20), accepted: move.B % 2 == 0));
        }

        var difference = Give(worker, command);
        return difference ?? (Car.Book.Count > 0 && command is HandTighten or RecordTorque && Guide.GoodTool(Car, Evidence.Setting, false) is not null
            && ReferenceEquals(Car.Rules, HoldRules.Standard) && ProblemsOf(Car.Book[^1].Entry) is { Count: > 0 } problems && !Excused(problems)
                ? $"the screens led to a report with [{string.Join(", ", problems)}]"
                : null);
    }

    // The guide pulls on with a tool out of use where the shop has no other, and may follow a step whose steps before are not signed.
    private static bool Excused(IReadOnlyList<HoldReason> problems) => problems.All(problem =>
        problem is HoldReason.StepBefore or HoldReason.TooLate or HoldReason.ToolOverdue or HoldReason.ToolAtItsLimit or HoldReason.CalibrationUnknown or HoldReason.ToolQuarantined or HoldReason.LowerStageMissing);

    private static IReadOnlyList<HoldReason> ProblemsOf(Entry entry) => entry switch
    {
        HandTightened fact => fact.Problems,
        TorqueRecorded fact => fact.Problems,
        Settled fact => fact.Problems,
        _ => [],
    };

    // Goes on a little, rests, is worked on all the same, and goes on after a while.
    private string? Rest(Move move)
    {
        if (Running(move.A) is not { } job)
        {
            return null;
        }

        return GoOnFor(move.B % 7, move)
            ?? Give(TestPerson.Lee, new PutJobOnHold(job.Id, CarAtWork.Reason))
            ?? (move.B % 3 > 0 && Guide.Next(Car, Car.State.Jobs[job.Id], move) is var (worker, command) ? Give(worker, command) : null)
            ?? (move.C % 5 == 0 ? null : Give(TestPerson.Lee, new ResumeJob(job.Id, CarAtWork.Shown)))
            ?? GoOnFor(move.C % 6, move);
    }

    // Goes on until all is signed, and ends the job by hand.
    private string? EndIt(Move move)
    {
        if (Running(move.A) is not { } job)
        {
            return null;
        }

        for (var i = 0; i < 30 && Guide.Next(Car, Car.State.Jobs[job.Id], move with { B = move.B + i, C = move.C / (i + 1) }) is var (worker, command); i++)
        {
            var before = Car.Last;
            if (Give(worker, command) is { } difference)
            {
                return difference;
            }

            if (Car.Last == before)
            {
                break;
            }
        }

        return Give(TestPerson.Lee, new EndJob(job.Id, CarAtWork.Shown));
    }

    private List<JobBook> AtWork => [.. Car.State.RunningJobs.Where(job => job.IsAtWork)];

    private JobBook? Running(int number)
    {
        var running = AtWork;
        return running.Count == 0 ? null : running[number % running.Count];
    }
}
