using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Something a person asks or reports of one tool.</summary>
public abstract record ToolCommand;

/// <summary>A command on a tool that nobody signs: it describes the tool, or only takes assurance away.</summary>
public abstract record ToolReport : ToolCommand;

/// <summary>A command on a tool that has to be signed.</summary>
/// <param name="Shown">Digest, in hex, of the lines that were shown.</param>
/// <param name="AsOf">Newest entry of the tool's logbook that was shown: where there is a newer one, it is refused with “look again”.</param>
public abstract record SignedToolCommand(string Shown, long AsOf) : ToolCommand;

/// <summary>Enter a tool, or its description again.</summary>
public sealed record EnterTool(TorqueTool Tool) : ToolReport;

/// <summary>Enter a calibration.</summary>
public sealed record Calibrate(Calibration Calibration, string Shown, long AsOf) : SignedToolCommand(Shown, AsOf);

/// <summary>Enter an instrument, or its description again.</summary>
public sealed record EnterInstrument(Instrument Instrument) : ToolReport;

/// <summary>Enter a check of an instrument.</summary>
public sealed record CheckInstrument(InstrumentCheck Check, string Shown, long AsOf) : SignedToolCommand(Shown, AsOf);

/// <summary>Report that the tool is out of use: dropped, overloaded, lent.</summary>
public sealed record Quarantine(ContentDigest Reason) : ToolReport;

/// <summary>Put everything tightened since the last good calibration in doubt.</summary>
public sealed record RaiseDoubt(ContentDigest Reason) : ToolReport;

/// <summary>Say that the tool was found good: lifts its doubts and its quarantine.</summary>
public sealed record ClearTool(ContentDigest Reason, string Shown, long AsOf) : SignedToolCommand(Shown, AsOf);

/// <summary>Say that a calibration or check was entered by mistake.</summary>
/// <param name="Calibration">Its entry.</param>
public sealed record WithdrawCalibration(long Calibration, ContentDigest Reason, string Shown, long AsOf) : SignedToolCommand(Shown, AsOf);

/// <summary>Take a tool or instrument out of use for good.</summary>
public sealed record RetireTool(ContentDigest Reason) : ToolReport;

/// <summary>Bring a retired tool or instrument back; it stays out of use until it is calibrated, checked or cleared.</summary>
public sealed record BringToolBack(ContentDigest Reason) : ToolReport;

/// <summary>Say that the owner of a car was told of the recall.</summary>
public sealed record TellOwner(CarId Car, ContentDigest Words) : ToolReport;
