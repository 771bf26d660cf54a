using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Step;

/// <summary>Conditions of threads and cars in the words on the screen.</summary>
public static class ConditionWords
{
    /// <summary>The huge word beside the number.</summary>
    public static string Of(ThreadCondition condition) => condition switch
    {
        ThreadCondition.Dry => "DRY",
        ThreadCondition.Oiled => "OILED",
        ThreadCondition.PreAppliedLocker => "PRE-APPLIED LOCKER",
        ThreadCondition.Locker => "LOCKER",
        ThreadCondition.AntiSeize => "ANTI-SEIZE",
        _ => throw new ArgumentOutOfRangeException(nameof(condition), condition, "Not a thread condition."),
    };

    /// <summary>What the word asks of the hands.</summary>
    public static string Asks(ThreadCondition condition) => condition switch
    {
        ThreadCondition.Dry => "clean, no oil, no locker",
        ThreadCondition.Oiled => "oil on threads and faces",
        ThreadCondition.PreAppliedLocker => "as supplied, add none",
        ThreadCondition.Locker => "locker put on now",
        _ => "paste on the threads, as the instruction says",
    };

    /// <summary>A car condition as people say it: "stand: wheel up".</summary>
    public static string Of(CarCondition condition) => $"{Plain(condition.Aspect)}: {Plain(condition.Value)}";

    /// <summary>A key of the register in plain words.</summary>
    public static string Plain(string key) => key.Replace('-', ' ');
}
