using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>A tool was entered, or its description entered anew.</summary>
public sealed record ToolEntered(TorqueTool Tool) : Entry;

/// <summary>A tool came back from calibration, or was checked on the rig.</summary>
public sealed record Calibrated(Calibration Calibration) : Entry;

/// <summary>A tool was taken out of use: dropped, overloaded, lent.</summary>
public sealed record Quarantined(ContentDigest Reason) : Entry;

/// <summary>Pulls made with the tool since its last good as-left calibration are in doubt.</summary>
public sealed record Doubted(ContentDigest Reason) : Entry;

/// <summary>The named doubts were lifted, and the quarantine with them: the tool was found good.</summary>
public sealed record Cleared(IReadOnlyList<long> Doubts, ContentDigest Reason) : Entry;
