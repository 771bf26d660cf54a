namespace ShopJobs.Domain.Logbook;

/// <summary>What kind of record a pull is; never mixed. Only a setting, a reading and an angle bring a joint on.</summary>
public enum TorqueKind
{
    SettingConfirmed,
    Reading,
    RunDown,
    BreakAway,
    Residual,

    /// <summary>The angle turned, read on a tool that measures it.</summary>
    AngleTurned,
}
