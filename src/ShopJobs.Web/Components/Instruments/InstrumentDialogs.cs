using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Instruments;

/// <summary>What is shown when a check of an instrument is signed.</summary>
internal static class InstrumentDialogs
{
    /// <summary>A check with what it found and what it does.</summary>
    public static ToSign<SignedToolCommand> ToCheck(InstrumentLine line, InstrumentCheck check) => new(
        new SignRequest(
            "SIGN: checked, or copied by me",
            $"Check of {line.Instrument.Name}{(line.Instrument.Serial.Length > 0 ? $", serial {line.Instrument.Serial}" : "")}",
            [
                $"Against {check.Certificate}, {check.Date.Day()}, good to {check.Due.Day()}",
                $"As found: {InstrumentWords.Words(check.FoundGood)}",
                $"As left: {InstrumentWords.Words(check.LeftGood)}",
                .. check.FoundGood == false ? ["Everything measured with it since its last good check comes in doubt"] : Array.Empty<string>(),
                check.LeftGood ? "It is in use" : "It is out of use",
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = Right.Lead },
        shown => new CheckInstrument(check, shown, line.State.Number));
}
