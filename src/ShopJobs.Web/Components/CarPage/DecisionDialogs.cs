using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>What the dialog shows where something held is decided, and so what is signed.</summary>
internal static class DecisionDialogs
{
    /// <param name="about">The car, and what is decided on it.</param>
    /// <param name="notThese">Whoever worked on it or held it.</param>
    /// <param name="command">The command by the digest of its reason, its acceptance and what was shown.</param>
    public static ToSign<SignedCommand> ToSign(
        string about, HoldDecision decision, IReadOnlySet<PersonId> notThese, Func<ContentDigest, Acceptance?, string, SignedCommand> command)
    {
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(decision.Reason));
        var kept = decision.Acceptance is { } said ? AcceptanceTyped.Keep(said) : default((Acceptance Acceptance, NewContent Text)?);
        var request = new SignRequest(
            $"DECIDE {JointLineWords.Of(decision.Disposition).ToUpperInvariant()}: my decision", about, decision.Shown, new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Decide,
            NotThese = notThese,
        };
        return new ToSign<SignedCommand>(request, shown => command(reason.Digest, kept?.Acceptance, shown), reason, kept?.Text);
    }
}
