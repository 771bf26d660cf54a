namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// The answer of <see cref="TargetChooser"/>: a safe target, the one value the maker states, or none with the reasons.
/// </summary>
public abstract record TargetChoice
{
    private TargetChoice()
    {
    }

    /// <summary>What would make the room wider, each a sentence with its figure: better tools, a higher jam torque, a finer scale.</summary>
    public IReadOnlyList<string> Widening { get; init; } = [];

    /// <summary>Computed limits that the choice may reach, each a sentence; they never move it.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>
    /// A target at the fastener, on a graduation of the tool, from <paramref name="Low"/> to <paramref name="High"/>, the safe
    /// interval; <paramref name="Limits"/> says in one sentence each what every hard limit is.
    /// </summary>
    public sealed record Safe(EnteredTorque Target, EnteredTorque Low, EnteredTorque High, IReadOnlyList<string> Limits) : TargetChoice
    {
        /// <summary>What to set on the tool: the target itself without adapter.</summary>
        public required EnteredTorque Setting { get; init; }
    }

    /// <summary>
    /// The maker states one value, so nothing is chosen. <paramref name="Setting"/> is what to set on the tool;
    /// <paramref name="Conflicts"/> says where the tool's range or a jam torque does not allow it, and is empty where all is well.
    /// </summary>
    public sealed record Stated(EnteredTorque Value, EnteredTorque Setting, IReadOnlyList<string> Conflicts) : TargetChoice;

    /// <summary>No torque is safe with these tools; the reasons say which limits cross and what could be changed.</summary>
    public sealed record None(IReadOnlyList<string> Reasons) : TargetChoice;
}
