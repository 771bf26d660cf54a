using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Look;

/// <summary>Torques as people type them.</summary>
internal static class TypedTorque
{
    /// <summary>No hand tool of a shop reaches further, in N·m (common practice, no source): beyond it a slip is likelier.</summary>
    private const decimal Largest = 10_000;

    /// <summary>The problem of a torque that no hand tool reaches, in words; null where one does.</summary>
    public static string? TooMuch(EnteredTorque value) =>
        value.NewtonMetres > Largest ? $"{value} is more than any hand tool reaches. Read it again." : null;
}
