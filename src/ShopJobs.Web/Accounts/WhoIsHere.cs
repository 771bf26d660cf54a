using Microsoft.AspNetCore.Components.Authorization;

namespace ShopJobs.Web.Accounts;

/// <summary>
/// For pages and their services: who is signed in now. Ask before every command and never keep the answer; a circuit
/// may outlive the session it was opened in.
/// </summary>
public sealed class WhoIsHere(AuthenticationStateProvider circuit, SessionDesk sessions)
{
    /// <summary>A person acts: the session stays awake. Null when there is none; send them to the sign-in page.</summary>
    public Task<Present?> ActingAsync(CancellationToken cancellation = default) => AskAsync(touch: true, cancellation);

    /// <summary>For drawing a page; does not keep the session awake.</summary>
    public Task<Present?> LookingAsync(CancellationToken cancellation = default) => AskAsync(touch: false, cancellation);

    private async Task<Present?> AskAsync(bool touch, CancellationToken cancellation)
    {
        var state = await circuit.GetAuthenticationStateAsync();
        return await sessions.CheckAsync(state.User, touch, cancellation);
    }
}
