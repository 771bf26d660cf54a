using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Procedures;

/// <summary>What sits between wrench and fastener, such as a crowfoot or a hook spanner, and so changes what the wrench is set to.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Setting">Its effective length and angle, and the length of the wrench that the procedure was written for.</param>
/// <param name="Source">Where the lengths come from.</param>
public sealed record Adapter(string Name, AdapterSetting Setting, Provenance Source)
{
    /// <summary>True where the length of the wrench enters what it is set to; at a right angle it does not.</summary>
    public bool AsksLength => Setting.Ratio != 1;

    /// <summary>
    /// The adapter on a tool, by the tool's own length. Null where that is asked and not entered, or too short for the adapter: then
    /// nobody knows what the tool has to be set to.
    /// </summary>
    public AdapterSetting? On(TorqueTool? tool) => !AsksLength ? Setting
        : tool?.LengthMm is { } length ? Setting.On(Length.FromMillimeters((double)length))
        : null;
}
