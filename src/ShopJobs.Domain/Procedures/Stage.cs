using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures;

/// <summary>What shows that a pull was made.</summary>
public enum Evidence
{
    /// <summary>The setting of a click tool, confirmed.</summary>
    Setting,

    /// <summary>A reading of an indicating tool.</summary>
    Reading,

    /// <summary>Either of the two.</summary>
    SettingOrReading,
}

/// <summary>One torque stage of a group.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Value">The torque to set.</param>
/// <param name="Permitted">Both ends inside. For an intermediate stage 80 to 120 % of the value unless the procedure says otherwise (common practice, no source).</param>
/// <param name="Conditions">What the car must be: all of them.</param>
/// <param name="Evidence">What shows that the pull was made.</param>
/// <param name="Witness">A second person must look before the stage counts.</param>
/// <param name="Visits">Positions in the order they are pulled; a position may come twice.</param>
/// <param name="Source">Where the value comes from.</param>
public sealed record Stage(
    int Number,
    EnteredTorque Value,
    TorqueRange Permitted,
    IReadOnlyList<CarCondition> Conditions,
    Evidence Evidence,
    bool Witness,
    IReadOnlyList<int> Visits,
    Provenance Source);
