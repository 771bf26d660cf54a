namespace ShopJobs.Web.Accounts;

/// <summary>
/// How long to wait after wrong PINs in a row. Grows from seconds to an hour, and the PIN is closed well below the
/// hundred failures NIST SP 800-63B rev. 3, 5.2.2 allows; the steps themselves are our choice.
/// </summary>
public static class PinDelay
{
    /// <summary>From here on only a new PIN helps.</summary>
    public const int Closed = 20;

    /// <summary>Wrong PINs in one unbroken session that end it.</summary>
    public const int EndsSession = 5;

    private const int FreePerPerson = 2;
    private const int FreePerTablet = 9;

    /// <summary>A tablet's count starts again after this long without a wrong PIN.</summary>
    public static readonly TimeSpan TabletForgets = TimeSpan.FromMinutes(15);

    /// <summary>Wait after this many wrong PINs of one person: none, none, 5 s, 10 s, 20 s ... 1 h.</summary>
    public static TimeSpan OfPerson(int failures) => Grow(failures - FreePerPerson);

    /// <summary>Wait after this many wrong PINs at one tablet, over all people.</summary>
    public static TimeSpan OfTablet(int failures) => Grow(failures - FreePerTablet);

    private static TimeSpan Grow(int step) =>
        step <= 0 ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(3600, 5 * Math.Pow(2, step - 1)));
}
