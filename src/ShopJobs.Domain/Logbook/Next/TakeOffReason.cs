namespace ShopJobs.Domain.Logbook;

/// <summary>Why something on the car has to come off before the work goes on.</summary>
public enum TakeOffReason
{
    /// <summary>As found: its pattern starts from nothing.</summary>
    AsFound,

    /// <summary>Rework was decided.</summary>
    Rework,

    /// <summary>Replace was decided.</summary>
    Replace,

    /// <summary>A record of it is void, and it may have been pulled all the same.</summary>
    MayHaveBeenPulled,

    /// <summary>A paper says that it was pulled, and nobody answers for it.</summary>
    DeclaredFromPaper,

    /// <summary>The last pull was short.</summary>
    ShortPull,

    /// <summary>What its pulls rest on was taken back.</summary>
    NothingToRestOn,

    /// <summary>Two nuts that drive or steady a stud.</summary>
    JamNuts,
}
