using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Identity;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Registers the door: tablets, people, rights and signatures.</summary>
internal static class AccountServices
{
    internal static IServiceCollection AddAccounts(this IServiceCollection services, IConfiguration configuration)
    {
        services.Configure<DoorRules>(configuration.GetSection("Door"));
        services.AddSingleton<IPasswordHasher<Person>, PasswordHasher<Person>>();
        services.AddSingleton<PinCheck>().AddSingleton<SessionDesk>().AddSingleton<TabletDesk>().AddSingleton<SignInDesk>();
        services.AddSingleton<PeopleShelf>().AddSingleton<ThirdPerson>();
        services.AddScoped<WhoIsHere>().AddScoped<SignatureDesk>().AddScoped<OwnPinDesk>();
        services.AddScoped<PersonCookieEvents>();
        services.AddSingleton<IAuthorizationHandler, RightRequirement.Handler>();
        services.AddCascadingAuthenticationState();
        services.AddAuthentication(PersonClaims.Scheme).AddCookie(PersonClaims.Scheme, options =>
        {
            options.Cookie.Name = "shop.person";
            options.Cookie.HttpOnly = true;
            options.Cookie.SameSite = SameSiteMode.Strict;
            options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
            options.ExpireTimeSpan = configuration.GetSection("Door").Get<DoorRules>()?.Longest ?? new DoorRules().Longest;
            options.SlidingExpiration = false;
            options.EventsType = typeof(PersonCookieEvents);
        });
        services.AddAuthorization(options =>
        {
            options.FallbackPolicy = new AuthorizationPolicyBuilder(PersonClaims.Scheme).RequireAuthenticatedUser().Build();
            foreach (var right in Enum.GetValues<Right>())
            {
                options.AddPolicy(right.ToString(), policy => policy.AddRequirements(new RightRequirement(right)));
            }
        });
        return services;
    }
}
