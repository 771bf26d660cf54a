namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Coefficient of friction in threads and under the head, least, nominal and greatest (0 &lt; low &lt;= nominal &lt;= high &lt;= 1),
/// with where it comes from.
/// </summary>
public sealed record FrictionBand
{
    private const string CommonPractice = "common practice, no source";

    private static readonly FrictionBand Dry = new(0.10, 0.14, 0.18, CommonPractice);
    private static readonly FrictionBand Oiled = new(0.08, 0.11, 0.14, CommonPractice);
    private static readonly FrictionBand PreAppliedLocker = new(0.10, 0.14, 0.18, CommonPractice);
    private static readonly FrictionBand Locker = new(0.09, 0.13, 0.18, CommonPractice);
    private static readonly FrictionBand AntiSeize = new(0.07, 0.09, 0.12, CommonPractice);

    /// <summary>Refuses values that are not in order or not above 0 and up to 1.</summary>
    public FrictionBand(double low, double nominal, double high, string source)
    {
        if (!(low > 0 && low <= nominal && nominal <= high && high <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(low), FormattableString.Invariant($"{low} / {nominal} / {high} is not a friction band: 0 < low <= nominal <= high <= 1."));
        }

        Low = low;
        Nominal = nominal;
        High = high;
        Source = source;
    }

    /// <summary>Least friction: the most clamp load from a torque.</summary>
    public double Low { get; }

    /// <summary>Friction expected.</summary>
    public double Nominal { get; }

    /// <summary>Greatest friction: the least clamp load from a torque.</summary>
    public double High { get; }

    /// <summary>Document, or that there is none.</summary>
    public string Source { get; }

    /// <summary>The band assumed where the maker states no friction: common practice, no source, for every condition.</summary>
    public static FrictionBand Assumed(ThreadCondition condition) => condition switch
    {
        ThreadCondition.Dry => Dry,
        ThreadCondition.Oiled => Oiled,
        ThreadCondition.PreAppliedLocker => PreAppliedLocker,
        ThreadCondition.Locker => Locker,
        ThreadCondition.AntiSeize => AntiSeize,
        _ => throw new ArgumentOutOfRangeException(nameof(condition), condition, "Not a thread condition."),
    };
}
