using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Step;

/// <summary>One record in words. A click tool's setting is never called measured.</summary>
public static class RecordWords
{
    // Both numbers stand: what was on the tool, and what that is at the fastener.
    private static string AtFastener(Pull pull) => pull.AtFastener == pull.Value ? ""
        : pull.Fact.RunDown is { } runDown ? $", of which {runDown} turn the nut: {pull.AtFastener} at the fastener"
        : $", {pull.AtFastener} at the fastener";

    /// <summary>For example "clicked at 110 N·m", "read 109.5 N·m, restated" or "turned 90°".</summary>
    public static string Of(Pull pull)
    {
        ArgumentNullException.ThrowIfNull(pull);
        var how = pull.Fact.Kind switch { TorqueKind.SettingConfirmed => "clicked at", TorqueKind.AngleTurned => "turned", _ => "read" };
        var after = (pull.Voided ? ", void" : "") + (pull.Restated is null ? "" : $", restated from {pull.Fact.Value}") + (pull.AcceptedBy is null ? "" : ", used as is");
        return $"{how} {pull.Amount()}{AtFastener(pull)}{after}";
    }
}
