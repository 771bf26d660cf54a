namespace ShopJobs.Domain.Tests.Specification.ReTorques;

/// <summary>What is asked for: a release, or the lead's signature at the date limit.</summary>
internal enum Asked
{
    Nothing,
    Road,
    RoadAccepted,
    RoadFromALowerOdometer,
    Track,
    TrackAccepted,
    SettledEarly,
    NewInterval,
}

/// <summary>
/// One joint with a re-torque after 60 km, at the latest at 120 km or at its day. The odometer goes in steps of 30 km and stops
/// mattering five steps on.
/// </summary>
/// <param name="Km">Steps of the odometer.</param>
/// <param name="First">The fact: the odometer at the first release after the final pull; -1 before one.</param>
/// <param name="From">What the book reckons the re-torque from; -1 from nothing.</param>
/// <param name="Again">Another release was given after that first one: taking that back takes nothing from the first.</param>
/// <param name="Driven">It was driven since that first release.</param>
/// <param name="DayOver">The last day of the re-torque is over.</param>
/// <param name="Extended">The lead gave it a new interval.</param>
/// <param name="Out">A release stands.</param>
/// <param name="Held">A re-torque was taken for a second pull.</param>
internal readonly record struct DrivenJoint(
    int Km, int First, int From, bool Again, bool Driven, bool DayOver, bool Extended, bool Settled, bool Out, bool Held, Asked Asked, bool Granted)
{
    public const int Furthest = 5;
    public const int Due = 2;
    public const int Latest = 4;

    public static readonly DrivenJoint Start = new() { First = -1, From = -1 };

    public static readonly Asked[] Releases = [Asked.Road, Asked.RoadAccepted, Asked.RoadFromALowerOdometer, Asked.Track, Asked.TrackAccepted];

    public bool Overdue => !Settled && First >= 0 && (Km - First >= Latest || DayOver);

    public bool MayRelease(Asked asked) => asked switch
    {
        Asked.Road => !Overdue,
        Asked.Track => Settled,
        Asked.RoadFromALowerOdometer => false,
        _ => true,
    };

    public DrivenJoint Release(Asked asked) => !MayRelease(asked) ? this with { Asked = asked, Granted = false } : this with
    {
        First = First < 0 ? Km : First,
        From = From < 0 ? Km : From,
        Again = First >= 0,
        Out = true,
        Asked = asked,
        Granted = true,
    };

    public DrivenJoint Drive() => Told() with { Km = Km + 1, Driven = true };

    public DrivenJoint Back() => Told() with { Out = false };

    public DrivenJoint Withdraw() => Driven || Again ? Back() : Back() with { First = -1, From = -1, DayOver = false, Extended = false };

    public DrivenJoint ReTorque() => Told() with { Settled = Km - From >= Due };

    public DrivenJoint DayEnds() => Told() with { DayOver = true };

    public DrivenJoint SettleEarly() => DayOver ? this with { Settled = true, Asked = Asked.SettledEarly, Granted = true } : this with { Asked = Asked.SettledEarly, Granted = false };

    public DrivenJoint Extend() => DayOver && !Extended
        ? this with { DayOver = false, Extended = true, Asked = Asked.NewInterval, Granted = true }
        : this with { Asked = Asked.NewInterval, Granted = false };

    public DrivenJoint PullAnew() => Start with { Km = Km };

    private DrivenJoint Told() => this with { Asked = Asked.Nothing, Granted = false };
}
