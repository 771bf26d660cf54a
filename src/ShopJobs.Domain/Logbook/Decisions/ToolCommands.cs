using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Something a person asks or reports of one tool.</summary>
public abstract record ToolCommand;

/// <summary>Enter a tool, or its description anew.</summary>
public sealed record EnterTool(TorqueTool Tool) : ToolCommand;

/// <summary>Enter a calibration.</summary>
public sealed record Calibrate(Calibration Calibration) : ToolCommand;

/// <summary>Report that the tool is out of use: dropped, overloaded, lent.</summary>
public sealed record Quarantine(ContentDigest Reason) : ToolCommand;

/// <summary>Put everything tightened since the last good calibration in doubt.</summary>
public sealed record RaiseDoubt(ContentDigest Reason) : ToolCommand;

/// <summary>Say that the tool was found good: lifts its doubts and its quarantine.</summary>
public sealed record ClearTool(ContentDigest Reason) : ToolCommand;
