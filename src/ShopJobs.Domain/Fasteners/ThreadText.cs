using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Reads thread designations; every refusal says what is wrong and what to write instead.</summary>
internal static partial class ThreadText
{
    private const int MostShown = 40;

    public static Advice? Read(string? text, out ThreadSize? size)
    {
        size = null;
        var typed = text?.Trim() ?? "";
        if (typed.Length == 0)
        {
            return new Advice("No thread given", "write it as M12x1.5 or 1/2-20 UNF");
        }

        if (typed.Length > MostShown)
        {
            return new Advice($"\"{typed[..MostShown]}...\" is too long for a thread size", "write it as M12x1.5 or 1/2-20 UNF");
        }

        if (MetricForm().Match(typed) is { Success: true } metric)
        {
            return ReadMetric(metric, typed, out size);
        }

        return InchForm().Match(typed) is { Success: true } inch
            ? ReadInch(inch, typed, out size)
            : new Advice($"\"{typed}\" is not a thread size known here", "write it as M12x1.5, 1/2-20 UNF or #10-32");
    }

    private static Advice? ReadMetric(Match match, string typed, out ThreadSize? size)
    {
        size = null;
        var diameter = Number(match.Groups["d"].Value);
        var pitch = match.Groups["p"].Success ? Number(match.Groups["p"].Value) : StandardThreads.CoarsePitch(diameter);
        if (pitch is null)
        {
            return new Advice($"\"{typed}\" has no coarse pitch in ISO 261", "write the pitch, for example M12x1.5");
        }

        if (!StandardThreads.IsMetricPitch(pitch.Value))
        {
            return new Advice(FormattableString.Invariant($"\"{typed}\" has a pitch of {pitch} mm, which ISO 261 does not have"), "read the thread again");
        }

        if (diameter is < 1 or > 150 || pitch > 0.3m * diameter)
        {
            return new Advice($"\"{typed}\" is not a bolt thread from M1 to M150 with a pitch below a third of its diameter", "read the thread again");
        }

        size = ThreadSize.Metric(diameter, pitch.Value);
        return null;
    }

    private static Advice? ReadInch(Match match, string typed, out ThreadSize? size)
    {
        size = null;
        decimal inches = 0;
        string diameter;
        if (match.Groups["gauge"].Success)
        {
            var gauge = int.Parse(match.Groups["gauge"].Value, CultureInfo.InvariantCulture);
            diameter = $"#{gauge}";
            inches = 0.060m + (0.013m * gauge);
        }
        else
        {
            diameter = match.Groups["whole"].Value;
            inches = diameter.Length > 0 ? Number(diameter) : 0;
            if (match.Groups["num"].Success)
            {
                var numerator = Number(match.Groups["num"].Value);
                var denominator = Number(match.Groups["den"].Value);
                if (denominator is not (2 or 4 or 8 or 16 or 32 or 64) || numerator >= denominator || numerator == 0)
                {
                    return new Advice($"\"{typed}\" has no inch fraction such as 7/16 or 1 1/8", "read the thread again");
                }

                inches += numerator / denominator;
                diameter = $"{diameter} {numerator}/{denominator}".Trim();
            }
        }

        var threads = int.Parse(match.Groups["tpi"].Value, CultureInfo.InvariantCulture);
        if (threads < 4 || inches is < 0.05m or > 6 || 1m / threads > 0.3m * inches)
        {
            return new Advice($"\"{typed}\" is not a bolt thread", "read diameter and threads per inch again");
        }

        var stated = match.Groups["series"].Value.ToUpperInvariant();
        var standard = StandardThreads.InchSeries(diameter, threads);
        if (stated is "UNC" or "UNF" && stated != standard)
        {
            return new Advice($"\"{typed}\" is not a {stated} size", "read diameter and threads per inch again");
        }

        var series = stated.Length > 0 ? stated : standard;
        size = ThreadSize.Inch(inches, threads, $"{diameter}-{threads} {series}".Trim());
        return null;
    }

    private static decimal Number(string digits) =>
        decimal.Parse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex("^M ?(?<d>[0-9]{1,3}([.,][0-9]{1,2})?)( ?[x×*] ?(?<p>[0-9]{1,2}([.,][0-9]{1,2})?))?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex MetricForm();

    [GeneratedRegex("^(#(?<gauge>[0-9]|1[02])|(?<whole>[1-9])[ -](?<num>[0-9]{1,2})/(?<den>[0-9]{1,2})|(?<num>[0-9]{1,2})/(?<den>[0-9]{1,2})|(?<whole>[1-9]))\"?"
        + " ?- ?(?<tpi>[0-9]{1,2})( ?(?<series>UNC|UNF|UNEF|UNS|UN))?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InchForm();
}
