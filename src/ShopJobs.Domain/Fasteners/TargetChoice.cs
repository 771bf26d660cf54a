namespace ShopJobs.Domain.Fasteners;

/// <summary>The answer of <see cref="TargetChooser"/>: a safe target, or none with the reasons.</summary>
public abstract record TargetChoice
{
    private TargetChoice()
    {
    }

    /// <summary>
    /// A target at the fastener, on a graduation of the tool, from <paramref name="Low"/> to <paramref name="High"/>;
    /// <paramref name="Limits"/> says in words what sets each side.
    /// </summary>
    public sealed record Safe(EnteredTorque Target, EnteredTorque Low, EnteredTorque High, IReadOnlyList<string> Limits) : TargetChoice
    {
        /// <summary>What to set on the tool: the target itself without adapter.</summary>
        public required EnteredTorque Setting { get; init; }
    }

    /// <summary>No torque is safe with these tools; the reasons say which limits cross and what could be changed.</summary>
    public sealed record None(IReadOnlyList<string> Reasons) : TargetChoice;
}
