using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Releases;

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

    /// <summary>A car condition as people say it: "wheel off the ground".</summary>
    public static string Of(CarCondition condition) => ConditionSaid.Of(condition);

    /// <summary>Who said it and when, by the shop's clock: "Jorn, 14:02"; with the day where it was another.</summary>
    public static string By(DeclaredCondition said, Circumstances now, IReadOnlyDictionary<PersonId, string> names)
    {
        ArgumentNullException.ThrowIfNull(said);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(names);
        var at = now.OnTheWall(said.At);
        return $"{names.GetValueOrDefault(said.Person, "somebody")}, {WallTime.Short(at, now.Today)}";
    }

    /// <summary>As it was said: "hub held, front left".</summary>
    public static string Said(CarCondition condition, string? place) =>
        $"{ConditionSaid.Of(condition)}{(place is null ? "" : $", {Plain(place)}")}";

    /// <summary>Why what was said no longer holds.</summary>
    public static string Of(ConditionEnd end, Circumstances now) => end switch
    {
        ConditionEnd.ByRelease(var kind) => $"ended: the car was released {kind.Words()} since",
        ConditionEnd.ByLeaving => "ended: the car has left the shop since",
        ConditionEnd.ByOpening(var joint) => $"ended: {now.Name(joint)} was opened since",
        ConditionEnd.ByResumption => "ended: a job went on since, after a hold",
        ConditionEnd.ByClock => "ended: the clock was set since, and nobody knows how old it is",
        ConditionEnd.ByAge(var hours) => string.Create(CultureInfo.InvariantCulture, $"ended: it lasts {hours:0.#} h"),
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, "Not an end of a declaration."),
    };

    /// <summary>A key of the register in plain words.</summary>
    public static string Plain(string key) => ConditionSaid.Plain(key);
}
