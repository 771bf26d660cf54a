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

    /// <summary>Somebody took a PIN of their own.</summary>
    PinChanged,

    /// <summary>A third person signed that they know somebody, and that the PIN is that person's own.</summary>
    PersonConfirmed,

    /// <summary>Somebody is called otherwise from now on.</summary>
    PersonRenamed,

    /// <summary>The personal data of a customer was erased.</summary>
    CustomerErased,
}
