namespace ShopJobs.Web.Data.People;

/// <summary>What the door book tells the lead.</summary>
public enum DoorEvent
{
    SignedIn,
    SignedOut,
    WrongPin,
    PinBlocked,
    PinReset,
    TabletEnrolled,
    TabletRevoked,
    PersonAdded,
    PersonClosed,
    PersonReopened,
    RightGiven,
    RightEnded,
}
