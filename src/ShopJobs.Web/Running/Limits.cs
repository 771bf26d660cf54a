using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace ShopJobs.Web.Running;

/// <summary>How often one address may knock. Put on a page with <c>[EnableRateLimiting(Limits.Door)]</c>.</summary>
public static class Limits
{
    /// <summary>Sign-in, enrolment and first start: 60 a minute.</summary>
    public const string Door = "door";

    /// <summary>Customers' pages: 30 a minute.</summary>
    public const string CustomerPage = "customer-page";

    /// <summary>Readings that tools send: 120 a minute.</summary>
    public const string Device = "device";

    internal static IServiceCollection AddLimits(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.OnRejected = async (context, cancellation) => await context.HttpContext.Response.WriteAsync(
            "Too many tries from this address. Wait a minute, then try again.", cancellation);
        Add(options, Door, 60);
        Add(options, CustomerPage, 30);
        Add(options, Device, 120);
    });

    private static void Add(RateLimiterOptions options, string name, int perMinute) =>
        options.AddPolicy(name, http => RateLimitPartition.GetFixedWindowLimiter(
            http.Connection.RemoteIpAddress?.ToString() ?? "local",
            _ => new FixedWindowRateLimiterOptions { PermitLimit = perMinute, Window = TimeSpan.FromMinutes(1) }));
}
