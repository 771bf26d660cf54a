using Microsoft.AspNetCore.Authorization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Accounts;

/// <summary>The policy behind <c>[Authorize(Policy = nameof(Right.Lead))]</c>: asks the database, not the cookie.</summary>
internal sealed record RightRequirement(Right Right) : IAuthorizationRequirement
{
    internal sealed class Handler(SessionDesk sessions) : AuthorizationHandler<RightRequirement>
    {
        protected override async Task HandleRequirementAsync(AuthorizationHandlerContext context, RightRequirement requirement)
        {
            if (await sessions.CheckAsync(context.User, touch: false) is { } present && present.May(requirement.Right))
            {
                context.Succeed(requirement);
            }
        }
    }
}
