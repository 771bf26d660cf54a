using System.Buffers.Text;
using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Knows the enrolled tablets by the random token in their cookie.</summary>
public sealed class TabletDesk(IDbContextFactory<ShopDbContext> database, TimeProvider time)
{
    internal const string Cookie = "shop.tablet";
    private const int TokenBytes = 32;

    /// <summary>The enrolled, not revoked tablet this request comes from; null for any other browser.</summary>
    public async Task<Tablet?> FindAsync(HttpContext http)
    {
        if (http.Request.Cookies[Cookie] is not { Length: > 0 and < 100 } token)
        {
            return null;
        }

        var hash = HashOf(token);
        await using var shop = await database.CreateDbContextAsync(http.RequestAborted);
        return await shop.Tablets.AsNoTracking()
            .SingleOrDefaultAsync(tablet => tablet.TokenHash == hash && tablet.RevokedAt == null, http.RequestAborted);
    }

    /// <summary>Makes this browser a tablet: adds the row to a context the caller saves, and sets the cookie.</summary>
    public DeviceId Enrol(ShopDbContext shop, HttpContext http, string name, PersonId by)
    {
        var token = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(TokenBytes));
        var now = time.GetUtcNow();
        var tablet = new Tablet
        {
            Id = new DeviceId(Guid.NewGuid()),
            Name = name,
            TokenHash = HashOf(token),
            EnrolledBy = by,
            EnrolledAt = now.UtcDateTime,
        };
        shop.Tablets.Add(tablet);
        shop.Note(DoorEvent.TabletEnrolled, now.UtcDateTime, about: null, tablet.Id, by);
        http.Response.Cookies.Append(Cookie, token, new CookieOptions
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Secure = http.Request.IsHttps,
            IsEssential = true,
            Expires = now.AddDays(400),
        });
        return tablet.Id;
    }

    private static byte[] HashOf(string token) => SHA256.HashData(System.Text.Encoding.ASCII.GetBytes(token));
}
