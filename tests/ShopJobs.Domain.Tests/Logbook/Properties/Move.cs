using CsCheck;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>What somebody does next. What that is in detail follows from where the car stands and the numbers.</summary>
internal readonly record struct Move(MoveKind Kind, int A, int B, int C)
{
    private static readonly (int, MoveKind)[] Weights =
    [
        (34, MoveKind.GoOn),
        (34, MoveKind.GoOnWrongly),
        (4, MoveKind.Short),
        (5, MoveKind.Pull),
        (4, MoveKind.Open),
        (3, MoveKind.Hand),
        (2, MoveKind.Fit),
        (2, MoveKind.Hold),
        (7, MoveKind.Decide),
        (6, MoveKind.Correct),
        (5, MoveKind.Confirm),
        (3, MoveKind.Look),
        (4, MoveKind.Sign),
        (6, MoveKind.Release),
        (3, MoveKind.Settle),
        (4, MoveKind.Tool),
        (4, MoveKind.Countersign),
        (3, MoveKind.Uphold),
        (2, MoveKind.Withdraw),
        (5, MoveKind.Stale),
        (4, MoveKind.Unentitled),
        (4, MoveKind.Trained),
        (4, MoveKind.Suspended),
        (3, MoveKind.Slow),
        (3, MoveKind.Uncured),
        (3, MoveKind.Start),
        (3, MoveKind.Result),
        (2, MoveKind.Declare),
        (2, MoveKind.Wait),
        (1, MoveKind.Summary),
        (2, MoveKind.Clock),
        (3, MoveKind.ComeBack),
        (2, MoveKind.Treat),
        (4, MoveKind.Rest),
        (3, MoveKind.End),
        (4, MoveKind.Visit),
        (3, MoveKind.Trailered),
        (2, MoveKind.Misweighed),
        (2, MoveKind.MovedOpen),
        (4, MoveKind.InOneGo),
        (2, MoveKind.SignIn),
        (4, MoveKind.Nonsense),
    ];

    public static readonly Gen<Move> One = Gen.Select(
        Gen.Frequency(Weights), Gen.Int[0, 999], Gen.Int[0, 999], Gen.Int[0, 999], (kind, a, b, c) => new Move(kind, a, b, c));

    /// <summary>A short history. The first number chooses the one or two jobs it begins with.</summary>
    public static readonly Gen<(int First, Move[] Moves)> History = Gen.Select(Gen.Int[0, 161], One.Array[4, 16]);
}

internal enum MoveKind
{
    /// <summary>Some of the next things that the screens ask for.</summary>
    GoOn,

    /// <summary>The next thing, with something wrong about it.</summary>
    GoOnWrongly,

    /// <summary>The next pull ends short, and is pulled on.</summary>
    Short,
    Pull,
    Open,
    Hand,
    Fit,
    Hold,
    Decide,
    Correct,
    Confirm,
    Look,
    Sign,
    Release,
    Settle,

    /// <summary>Somebody with the right answers for pulls of somebody without it.</summary>
    Countersign,
    Uphold,
    Withdraw,

    /// <summary>The next pull is made by somebody without the right, and somebody answers for it.</summary>
    Unentitled,

    /// <summary>The next step is signed by a trainee, and mostly somebody answers for it.</summary>
    Trained,

    /// <summary>A release that stands is suspended by a hold, which is decided; then the lead lets it stand again.</summary>
    Suspended,

    /// <summary>A long break after HAND-TIGHT.</summary>
    Slow,

    /// <summary>The studs are driven again, and a release is asked for before their cure is signed.</summary>
    Uncured,

    /// <summary>Something is signed as it was drawn before something else happened.</summary>
    Stale,
    Tool,
    Start,
    Result,
    Declare,
    Wait,
    Summary,

    /// <summary>Somebody sets the clock of the machine, or the lead sets it right and signs.</summary>
    Clock,

    /// <summary>The car comes back from a road test.</summary>
    ComeBack,

    /// <summary>Something is put on a thread, or it is cleaned.</summary>
    Treat,

    /// <summary>A job is put on hold, something is reported of it all the same, and it goes on.</summary>
    Rest,

    /// <summary>A job is ended, put on hold, resumed, cancelled or taken back.</summary>
    End,

    /// <summary>The car comes in, is moved, or leaves; or somebody looks it over.</summary>
    Visit,

    /// <summary>A car that was released is not driven, and the last day of its re-torque comes.</summary>
    Trailered,

    /// <summary>The car is weighed, the scales turn out to be wrong, and a release is asked for.</summary>
    Misweighed,

    /// <summary>A car with an open joint was moved all the same; somebody looks it over, and a release is asked for.</summary>
    MovedOpen,

    /// <summary>One person does several steps, says of each that it is done, and signs them with one PIN.</summary>
    InOneGo,

    /// <summary>Somebody signs in again.</summary>
    SignIn,
    Nonsense,
}
