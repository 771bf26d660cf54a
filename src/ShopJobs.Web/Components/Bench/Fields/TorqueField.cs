using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A torque, with its own unit or in the page's.</summary>
public sealed class TorqueField(string key, string label) : BenchField<EnteredTorque>(key, label)
{
    /// <summary>No hand tool of a shop reaches further, in N·m (common practice, no source).</summary>
    private const decimal Largest = 10_000;

    /// <summary>True where none, 0, is an answer.</summary>
    public bool MayBeZero { get; init; }

    /// <inheritdoc/>
    public override string? UnitBeside(string text, BenchUnits units) =>
        EnteredTorque.TryParse(text, units.TorqueUnit, out _, out _) && char.IsLetter(text[^1]) ? null : units.TorqueUnit.Symbol();

    /// <inheritdoc/>
    public override string Respelled(string text, BenchUnits from, BenchUnits to) =>
        !EnteredTorque.TryParse(text, from.TorqueUnit, out var value, out _) ? text
        : value.Unit == to.TorqueUnit ? TypedNumber.Plain(value.Value)
        : value.ToString();

    private protected override bool TryRead(string text, BenchUnits units, out EnteredTorque value, out string? problem)
    {
        if (EnteredTorque.TryParse(text, units.TorqueUnit, out value, out problem))
        {
            problem = value switch
            {
                { Value: 0 } when !MayBeZero => "It must be above 0.",
                { NewtonMetres: > Largest } => $"{value} is more than any hand tool reaches. Read it again.",
                _ => null,
            };
        }

        return problem is null;
    }
}
