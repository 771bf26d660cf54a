using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Who is signed in at which tablet, as the database said a moment ago.</summary>
public sealed record Present(
    PersonId Person, string Name, string Initials, DeviceId Tablet, SessionId Session, IReadOnlySet<Right> Rights)
{
    public bool May(Right right) => Rights.Contains(right);
}
