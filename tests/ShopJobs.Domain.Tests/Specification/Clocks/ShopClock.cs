namespace ShopJobs.Domain.Tests.Specification.Clocks;

/// <summary>
/// A shop whose clock may be set wrong while the program runs, with one cure of two hours. Hours stop mattering after the sixth.
/// </summary>
/// <param name="True">The fact: hours since the morning.</param>
/// <param name="Off">By how many hours the clock is wrong.</param>
/// <param name="Last">The instant of the newest entry.</param>
/// <param name="WentBack">The newest entry was written with an instant before the one before it.</param>
/// <param name="Doubtful">The clock went back or jumped, and the lead has not set the time again.</param>
/// <param name="Said">The shop's book says so.</param>
/// <param name="CuringSince">The fact: when the locker went on; -1 none.</param>
/// <param name="BookedSince">The instant of that entry.</param>
/// <param name="InDoubt">The cure began or ran while the clock was doubtful, and the lead has not signed since.</param>
/// <param name="Loaded">The cure was taken as over and the joint loaded.</param>
/// <param name="BySignature">The lead signed the time while this cure ran.</param>
/// <param name="Refused">A fact was refused.</param>
/// <param name="EndedBefore">The cure was over when the clock was first seen wrong: it ended before, not in between.</param>
internal readonly record struct ShopClock(
    int True, int Off, int Last, bool WentBack, bool Doubtful, bool Said, int CuringSince, int BookedSince, bool InDoubt, bool Loaded, bool BySignature, bool Refused,
    bool EndedBefore)
{
    public const int LastHour = 6;
    public const int Cure = 2;

    public static readonly int[] Jumps = [-2, 2];

    public static readonly ShopClock Start = new() { CuringSince = -1, BookedSince = -1 };

    public int Shows => True + Off;

    public bool CureOver => CuringSince >= 0 && (EndedBefore || (!InDoubt && Math.Max(Shows, Last) - BookedSince >= Cure));

    public ShopClock Hour() => this with { True = True + 1 };

    /// <summary>Somebody sets the clock: the next entry sees it.</summary>
    public ShopClock Set(int by) => this with { Off = Off + by };

    /// <summary>Any fact: its instant is never before the last one's; a clock that went back or jumped is said with it.</summary>
    public ShopClock Record() => Look().Write();

    public ShopClock Apply()
    {
        var seen = Look().Write();
        return seen with { CuringSince = True, BookedSince = seen.Last, InDoubt = seen.Doubtful, EndedBefore = false, Loaded = false, BySignature = false };
    }

    /// <summary>The joint is to be loaded: asked at an instant that is seen like any other, and written only where it is granted.</summary>
    public ShopClock Load()
    {
        var seen = Look();
        return seen.CureOver ? seen.Write() with { Loaded = true } : seen;
    }

    /// <summary>The lead reads a clock he trusts and signs it: from here the time is right, and he says from when the cure runs.</summary>
    public ShopClock LeadSigns() => this with
    {
        Off = 0,
        Doubtful = false,
        Said = Said || Doubtful,
        InDoubt = false,
        Last = True,
        BookedSince = CuringSince,
        BySignature = CuringSince >= 0,
    };

    private bool Jumped => Off != 0;

    private ShopClock Look() => this with
    {
        Doubtful = Doubtful || Jumped,
        EndedBefore = EndedBefore || (Jumped && !Doubtful && !InDoubt && CuringSince >= 0 && True - CuringSince >= Cure),
        InDoubt = InDoubt || (CuringSince >= 0 && !Loaded && Jumped && True - CuringSince < Cure),
    };

    private ShopClock Write() => this with { Last = Math.Max(Last, Shows), Said = Said || Doubtful };
}
