using ShopJobs.Domain.Parts;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Everything that a comparison for one group of one job rests on.</summary>
/// <param name="Group">The group of the job's procedure.</param>
/// <param name="Joint">What an option would fill.</param>
/// <param name="Options">The options by maker and name.</param>
/// <param name="Stacks">The car's wheel stacks by name.</param>
/// <param name="Choices">The choices made for it, the newest first.</param>
/// <param name="Comparison">The options side by side.</param>
public sealed record PartsOnJob(
    JointGroup Group,
    JointToFill Joint,
    IReadOnlyList<OptionRow> Options,
    IReadOnlyList<WheelStackRow> Stacks,
    IReadOnlyList<PartChoice> Choices,
    PartComparison Comparison)
{
    /// <summary>The choice that counts; null before there is one.</summary>
    public PartChoice? Chosen => Choices.Count == 0 ? null : Choices[0];

    /// <summary>The wheel stacks that the length is judged on; none for a joint that is not on a wheel.</summary>
    public IReadOnlyList<WheelStackRow> StacksUnder => Joint.OnWheel ? Stacks : [];

    /// <summary>
    /// Mark of an option with the wheel stacks under it as they are here, SHA-256 in hex: another one as soon as a value of it was
    /// changed, or a stack was changed, added or removed.
    /// </summary>
    public string MarkOf(PartOptionId option) => Convert.ToHexStringLower(ShownDigest.Of(
        "Option on its wheel stacks",
        [
            .. Options.Where(row => row.Id == option).Select(row => $"option {row.Revision}"),
            .. StacksUnder.Select(row => $"stack {row.Revision}").Order(StringComparer.Ordinal),
        ]));

    /// <summary>True for a group that options can be compared for: a bolt or stud that stays on the car.</summary>
    public static bool Covers(PlacedProcedure placed, JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(group);
        return !group.Temporary && placed.Register.Kinds[group.Key].FilledBy != Filling.Nut;
    }
}
