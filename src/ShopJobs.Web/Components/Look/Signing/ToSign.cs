using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>
/// A signature that is asked for, with the command it is for. The command is made from what is shown, before anybody signs, and nothing
/// of it is read again after the PIN.
/// </summary>
/// <typeparam name="TCommand">A signed command on a car or on a tool.</typeparam>
/// <param name="Command">Names the digest of what is shown, and what the signature covers.</param>
/// <param name="Contents">Texts that the command names by digest.</param>
public sealed record ToSign<TCommand>(SignRequest Request, TCommand Command, IReadOnlyList<NewContent> Contents)
    where TCommand : class
{
    /// <summary>Makes the command from the digest of what is shown.</summary>
    public ToSign(SignRequest request, Func<string, TCommand> command, params IReadOnlyList<NewContent?> contents)
        : this(request, command(request.Shown.Hex), [.. contents.OfType<NewContent>()])
    {
    }
}
