using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Step;

/// <summary>A run-down torque typed for one position in one of its cycles. It is recorded with the first pull and kept in the address until then.</summary>
public sealed record RunDownTyped(JointPosition Position, int Cycle, EnteredTorque Value)
{
    /// <summary>As it stands in the address: key, place, number, cycle and N·m.</summary>
    public string Text => FormattableString.Invariant($"{Position.Key}/{Position.Place}/{Position.Number}/{Cycle}/{Value.NewtonMetres}");

    /// <summary>Reads <see cref="Text"/>; null when it is none.</summary>
    public static RunDownTyped? Read(string? text) =>
        text?.Split('/') is [var key, var place, var number, var cycle, var torque]
            && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var at)
            && int.TryParse(cycle, NumberStyles.None, CultureInfo.InvariantCulture, out var since)
            && EnteredTorque.TryParse(torque, TorqueUnit.NewtonMetre, out var value, out _)
            ? new RunDownTyped(new JointPosition(key, place, at), since, value)
            : null;

    /// <summary>True when it was typed for this cell.</summary>
    public bool IsFor(Cell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Position == Position && cell.Cycle == Cycle;
    }
}
