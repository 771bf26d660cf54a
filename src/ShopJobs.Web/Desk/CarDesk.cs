using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>Where commands on cars are decided and cars are read. Every command is judged against the database.</summary>
public sealed class CarDesk(LogbookWriter writer, LogbookSnapshots snapshots, Surroundings surroundings, ClockWatch watch, TimeProvider time)
{
    /// <summary>Runs a report or another command that nobody signs.</summary>
    /// <param name="id">Made by the client before the first send, the same on each retry.</param>
    /// <param name="here">Who is signed in at which tablet.</param>
    /// <param name="contents">Texts the command names by digest.</param>
    /// <param name="rows">Ordinary rows that are valid or fall with the entries.</param>
    public Task<DeskAnswer> RunAsync(
        CarId car,
        CommandId id,
        Present here,
        Report command,
        IReadOnlyList<NewContent>? contents = null,
        Action<SqliteTransaction>? rows = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(here);
        return RunAsync(car, id, new Stamp(here.Person, here.Person, here.Tablet) { Session = here.Session }, command, new Kept(contents ?? []), rows, cancellation);
    }

    /// <summary>Runs a command that is signed: the entry's person is the signer. What was shown is kept beside the entry.</summary>
    /// <param name="proof">Proof of the PIN for this command and this screen.</param>
    /// <param name="id">The command that was asked to be signed.</param>
    /// <param name="shown">What was shown to the signer.</param>
    /// <param name="command">Made from what was shown, before it was signed.</param>
    /// <param name="contents">Texts the command names by digest.</param>
    public Task<DeskAnswer> SignAsync(
        CarId car,
        SignatureProof proof,
        CommandId id,
        ShownLines shown,
        SignedCommand command,
        IReadOnlyList<NewContent>? contents = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(command);
        var stamp = new Stamp(proof.Signer, proof.SessionPerson, proof.Tablet) { Session = proof.Session };
        var kept = Kept.Signed(proof, shown, contents ?? []);
        return Signing.Covers(proof, id, shown, command.Shown, time)
            ? RunAsync(car, id, stamp, command, kept, null, cancellation)
            : Task.FromResult(Signing.NotForThis);
    }

    /// <summary>The answer this very command got before; null when it was never recorded.</summary>
    public DeskAnswer? Earlier(CarId car, CommandId id, Command command) => writer.Earlier(id, RequestDigest.Of(car, command)) is { } earlier
        ? Answers.Of(earlier)
        : null;

    /// <summary>Reads a car as it is now.</summary>
    /// <param name="person">Whose rights to judge with; null for nobody's.</param>
    /// <param name="session">The session that this person looks from; null for none.</param>
    public CarReading Read(CarId car, PersonId? person, SessionId? session = null) =>
        snapshots.Read(reader => Read(reader, car, person, session, Surroundings.AllTools(reader)));

    /// <summary>Reads cars as they are at one moment, in the order asked.</summary>
    /// <param name="person">Whose rights to judge with; null for nobody's.</param>
    /// <param name="session">The session that this person looks from; null for none.</param>
    public IReadOnlyList<CarReading> ReadAll(IEnumerable<CarId> cars, PersonId? person, SessionId? session = null) => snapshots.Read(reader =>
    {
        var tools = Surroundings.AllTools(reader);
        return cars.Select(car => Read(reader, car, person, session, tools)).ToList();
    });

    private CarReading Read(LogbookReader reader, CarId car, PersonId? person, SessionId? session, IReadOnlyDictionary<ToolId, ToolState> tools)
    {
        var folded = reader.FoldAsFarAsReadable(Folders.LogbookOf(car), Folders.Car);
        return new CarReading(
            car,
            folded.State,
            Surroundings.About(surroundings.Kept(reader, person ?? default, folded.State, tools), reader, car, folded.State) with { Session = session },
            tools,
            folded.Head.Hash.ToString())
        {
            Unreadable = folded.Unreadable?.Message,
        };
    }

    private async Task<DeskAnswer> RunAsync(
        CarId car,
        CommandId id,
        Stamp stamp,
        Command command,
        Kept kept,
        Action<SqliteTransaction>? rows,
        CancellationToken cancellation)
    {
        var logbook = Folders.LogbookOf(car);
        var result = await writer.RunAsync(
            id,
            RequestDigest.Of(car, command),
            stamp,
            reader =>
            {
                if (!Surroundings.IsActive(reader, stamp.Person))
                {
                    return Answers.NotActive();
                }

                var state = reader.Fold(logbook, Folders.Car);
                var seen = watch.Look(reader);
                var now = Surroundings.About(surroundings.Of(reader, stamp.Person, seen), reader, car, state) with { Session = stamp.Session };
                var verdict = Retired(reader, command) is { } retired ? new Verdict.Refused([retired]) : state.Decide(command, now);
                return Answers.ToDecision(reader, logbook, verdict, HoldNames.Of(now), kept, seen, rows);
            },
            cancellation);
        return Answers.Of(result);
    }

    // A retired procedure goes on no new car; what runs keeps it.
    private static HoldPoint? Retired(LogbookReader reader, Command command) =>
        command is StartJob { Procedure.Code: var code }
        && reader.Row($"retired:{code}", "SELECT RetiredAt FROM Procedures WHERE Code = $1 ORDER BY CurrentSince DESC LIMIT 1", [code], at => at is string)
            ? new HoldPoint(HoldReason.ProcedureRetired) { Name = code }
            : null;
}
