using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>A tool as the lead types it. Tool and command ids are made with the form, so sending twice enters one tool.</summary>
public sealed class ToolForm
{
    public ToolId Id { get; init; } = new(Guid.NewGuid());

    /// <summary>True when the tool is in the book and is described again.</summary>
    public bool Known { get; init; }

    /// <summary>The same on each retry; a new one after a refusal was corrected.</summary>
    public CommandId Command { get; set; } = new(Guid.NewGuid());

    public string Name { get; set; } = "";

    public string Serial { get; set; } = "";

    public ToolKind Kind { get; set; } = ToolKind.Click;

    public TorqueUnit Unit { get; set; } = TorqueUnit.NewtonMetre;

    public string LowestMarked { get; set; } = "";

    public string Top { get; set; } = "";

    public string Graduation { get; set; } = "";

    /// <summary>Plus-minus percent stated by the maker; empty for the limits of ISO 6789.</summary>
    public string ClassDeviation { get; set; } = "";

    /// <summary>From the mark of the hand to the square drive, in mm; empty where nobody measured it.</summary>
    public string Length { get; set; } = "";

    /// <summary>Pulls after which it is calibrated again; empty for the 5000 of ISO 6789.</summary>
    public string CycleLimit { get; set; } = "";

    public static ToolForm Of(ToolId id, TorqueTool tool) => new()
    {
        Id = id,
        Known = true,
        Name = tool.Name,
        Serial = tool.Serial,
        Kind = tool.Kind,
        Unit = tool.Unit,
        LowestMarked = TypedNumber.Plain(tool.LowestMarked),
        Top = TypedNumber.Plain(tool.Top),
        Graduation = TypedNumber.Plain(tool.Graduation),
        ClassDeviation = tool.ClassDeviationPercent is { } percent ? TypedNumber.Plain(percent) : "",
        CycleLimit = tool.CycleLimit == TorqueTool.StandardCycles ? "" : TypedNumber.Plain(tool.CycleLimit),
        Length = tool.LengthMm is { } length ? TypedNumber.Plain(length) : "",
    };
}
