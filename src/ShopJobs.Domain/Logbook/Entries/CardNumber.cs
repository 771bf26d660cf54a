using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// The number on a printed job card, such as "118-63-B5E6": the newest entry of the car's logbook at the print, the whole minutes from that
/// entry to the print, and four letters that do not fit when one of it is mistyped or the card is another job's.
/// </summary>
/// <param name="Entry">The newest entry then; what the card says is as of it.</param>
/// <param name="Minutes">Whole minutes from that entry to the print.</param>
public readonly partial record struct CardNumber(long Entry, long Minutes)
{
    /// <summary>Most letters of one.</summary>
    public const int MostLetters = 30;

    private const int CheckLetters = 4;

    /// <summary>The number of a card that is printed now.</summary>
    /// <param name="entry">The newest entry of the car's logbook.</param>
    /// <param name="at">Its instant; the same clock as <paramref name="now"/>.</param>
    public static CardNumber Printed(long entry, DateTime at, DateTime now) => new(entry, Math.Max(0, (long)(now - at).TotalMinutes));

    /// <summary>As it stands on the card of this job.</summary>
    public string On(CarId car, JobId job) => FormattableString.Invariant($"{Entry}-{Minutes}-{Check(car, job)}");

    /// <summary>What somebody typed, with or without blanks, as a card of this job; null where it is none.</summary>
    public static CardNumber? Read(string? typed, CarId car, JobId job)
    {
        var text = string.Concat((typed ?? "").Where(letter => !char.IsWhiteSpace(letter))).ToUpperInvariant();
        return text.Length <= MostLetters && Form().Match(text) is { Success: true } found
            && long.TryParse(found.Groups["entry"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var entry)
            && long.TryParse(found.Groups["minutes"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            && new CardNumber(entry, minutes) is var card && card.Check(car, job) == found.Groups["check"].Value
            ? card
            : null;
    }

    private string Check(CarId car, JobId job) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(
        FormattableString.Invariant($"{car.Value:N}/{job.Value:N}/{Entry}/{Minutes}"))))[..CheckLetters];

    [GeneratedRegex("^(?<entry>[0-9]{1,9})-(?<minutes>[0-9]{1,9})-(?<check>[0-9A-F]{4})$")]
    private static partial Regex Form();
}
