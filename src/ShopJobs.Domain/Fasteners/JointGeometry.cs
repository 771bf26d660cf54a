using System.Diagnostics.CodeAnalysis;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// What the torque of a joint depends on besides friction, in plain millimetres: P pitch, d2 pitch diameter, and the arm on
/// which friction of the seat acts (Dkm/2 for a flat face). No allocation.
/// </summary>
public readonly record struct JointGeometry(double Pitch, double PitchDiameter, double BearingArm)
{
    /// <summary>1/(2 cos 30 degrees): flank of a 60 degree thread.</summary>
    private const double Flank = 0.57735026918962584;

    /// <summary>Torque in N·mm that gives 1 N of clamp load: P/2pi + mu_t d2/(2 cos 30) + mu_b arm (VDI 2230).</summary>
    public double TorquePerForce(double threadFriction, double bearingFriction) =>
        (Pitch / (2 * Math.PI)) + (Flank * threadFriction * PitchDiameter) + (bearingFriction * BearingArm);

    /// <summary>Torque in N·mm that loosens 1 N of clamp load: -P/2pi + mu_t d2/(2 cos 30) + mu_b arm; above 0 = self-locking.</summary>
    public double LooseningTorquePerForce(double threadFriction, double bearingFriction) =>
        (-Pitch / (2 * Math.PI)) + (Flank * threadFriction * PitchDiameter) + (bearingFriction * BearingArm);

    /// <summary>The geometry of a thread on a seat; false with the reason where the seat is not known.</summary>
    public static bool TryFor(ThreadSize thread, Seat? seat, out JointGeometry geometry, [NotNullWhen(false)] out string? reason)
    {
        geometry = default;
        if (seat is null)
        {
            reason = "no seat is given";
            return false;
        }

        reason = null;
        geometry = For(thread, seat);
        return true;
    }

    /// <summary>The geometry of a thread on a known seat.</summary>
    public static JointGeometry For(ThreadSize thread, Seat seat)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(seat);
        return new JointGeometry(thread.PitchMm, thread.PitchDiameterMm, seat.BearingArm.Millimeters);
    }
}
