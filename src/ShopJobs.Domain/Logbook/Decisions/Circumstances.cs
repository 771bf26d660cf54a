using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Who acts, when, and what is known beside the car's own logbook.</summary>
/// <param name="Person">The actor: for a signature, the verified signer.</param>
/// <param name="Rights">Rights of the actor on this day.</param>
/// <param name="At">The server's instant, UTC.</param>
/// <param name="Today">The shop's date at that instant.</param>
/// <param name="Register">The shop's joint register.</param>
/// <param name="Placed">The placed procedure of a job.</param>
/// <param name="Tool">The state of a tool; <see cref="ToolState.Empty"/> when unknown.</param>
public sealed record Circumstances(
    PersonId Person,
    IReadOnlySet<Right> Rights,
    DateTime At,
    DateOnly Today,
    JointRegister Register,
    Func<JobBook, PlacedProcedure> Placed,
    Func<ToolId, ToolState> Tool)
{
    /// <summary>An instant (UTC) as the shop's clock shows it; UTC itself where no shop is known. For words alone, never for a rule.</summary>
    public Func<DateTime, DateTime> OnTheWall { get; init; } = static at => at;

    /// <summary>How the shop's clock went: what runs out by time asks it.</summary>
    public ShopState Shop { get; init; } = ShopState.Empty;

    /// <summary>By how much <see cref="At"/> is ahead of what the clock shows; zero where it is what the clock shows.</summary>
    public TimeSpan Ahead { get; init; }

    /// <summary>People for whom the actor is no second person: they enrolled him, gave him his right or reset his PIN, and no third has confirmed him.</summary>
    public IReadOnlySet<PersonId> TiedTo { get; init; } = System.Collections.Frozen.FrozenSet<PersonId>.Empty;

    /// <summary>A kind of joint: of the register in force, or of the one that a running job was started with. Null where neither has it.</summary>
    public JointKind? KindOf(CarState state, string key)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Register.Kinds.GetValueOrDefault(key)
            ?? state.RunningJobs.Select(job => Placed(job).Register.Kinds.GetValueOrDefault(key)).FirstOrDefault(kind => kind is not null);
    }

    /// <summary>True when the actor has the right.</summary>
    public bool May(Right right) => Rights.Contains(right);
}
