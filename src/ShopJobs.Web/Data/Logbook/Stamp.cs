using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>Who a command comes from.</summary>
/// <param name="Person">The verified signer, or the person of the session where nothing was signed.</param>
/// <param name="SessionPerson">Whose session the tablet is in, if anybody's.</param>
/// <param name="Device">The tablet or scanner.</param>
public sealed record Stamp(PersonId Person, PersonId? SessionPerson, DeviceId Device)
{
    /// <summary>The tablet's session that it comes from; null where it comes from none.</summary>
    public SessionId? Session { get; init; }

    /// <summary>The command sets the time again: its entry alone may be earlier than the newest one.</summary>
    public bool SetsClock { get; init; }
}
