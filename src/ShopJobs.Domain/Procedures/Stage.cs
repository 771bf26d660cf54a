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

/// <summary>One stage of a group: a torque to reach, or an angle to turn on from the torque of a stage below.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Value">The torque to set; at an angle stage the torque that it is turned on from.</param>
/// <param name="Permitted">Of that torque, both ends inside. For an intermediate stage 80 to 120 % of the value unless the procedure says otherwise (common practice, no source).</param>
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
    Provenance Source)
{
    /// <summary>The angle to turn; null at a torque stage.</summary>
    public Turn? Turn { get; init; }

    /// <summary>What is asked, as it is read out: "40 N·m", "+90°".</summary>
    public string Amount() => Turn?.ToString() ?? Value.ToString();

    /// <summary>What is permitted, as it is read out: "38 to 42 N·m", "85 to 95°".</summary>
    public string PermittedAmount() => Turn?.Permitted() ?? Permitted.ToString();
}
