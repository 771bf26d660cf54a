using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tools;

/// <summary>A recorded torque judged again by what a later calibration found of its tool.</summary>
public abstract record TorqueReview
{
    private TorqueReview()
    {
    }

    /// <summary>The torque that was delivered at the tool, and how it compares with the permitted range.</summary>
    public sealed record Known(EnteredTorque Delivered, bool IsUnder, bool IsOver) : TorqueReview
    {
        /// <summary>True inside the permitted range, both ends inside.</summary>
        public bool IsInside => !IsUnder && !IsOver;
    }

    /// <summary>Outside the calibrated points nothing is known of what was delivered: treated as out of range.</summary>
    public sealed record Unknown : TorqueReview;

    /// <summary>
    /// True torque = recorded x rig/set, linear between the points as found (in <paramref name="toolUnit"/>), compared with the range
    /// in decimal N·m. A record in another unit than the tool's is the same torque in the tool's.
    /// </summary>
    /// <param name="atFastener">What the torque at the tool is at the fastener: through an adapter, without a run-down torque; itself when null.</param>
    public static TorqueReview Of(
        EnteredTorque recorded,
        TorqueUnit toolUnit,
        IReadOnlyList<CalibrationPoint> asFound,
        TorqueRange permitted,
        Func<EnteredTorque, EnteredTorque>? atFastener = null)
    {
        ArgumentNullException.ThrowIfNull(permitted);
        var shown = recorded.Unit == toolUnit ? recorded.Value : recorded.NewtonMetres / toolUnit.NewtonMetresPerUnit();
        if (asFound.TrueTorque(shown) is not { } rig)
        {
            return new Unknown();
        }

        var delivered = new EnteredTorque(rig, toolUnit);
        var judged = atFastener is null ? delivered : atFastener(delivered);
        return new Known(delivered, permitted.IsUnder(judged), permitted.IsOver(judged));
    }
}
