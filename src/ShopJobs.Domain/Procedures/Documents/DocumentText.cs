using System.Globalization;
using System.Text;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Turns the bytes of a document into text: UTF-8 without a mark, at most 1 MB, nothing invisible.</summary>
public static class DocumentText
{
    /// <summary>Largest document, in bytes.</summary>
    public const int MostBytes = 1_000_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    internal static string? Read(byte[] bytes, ProblemsFound problems)
    {
        if (bytes.Length > MostBytes)
        {
            return Refuse(problems, 1, string.Create(CultureInfo.InvariantCulture,
                $"The document is larger than {MostBytes} bytes"), "split it: a procedure is one job");
        }

        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return Refuse(problems, 1, "The document is UTF-16, not UTF-8", "save it as UTF-8 without a byte order mark");
        }

        if (bytes is [0xEF, 0xBB, 0xBF, ..])
        {
            return Refuse(problems, 1, "The document starts with a byte order mark", "save it as UTF-8 without a byte order mark");
        }

        try
        {
            return Visible(Strict.GetString(bytes), problems);
        }
        catch (DecoderFallbackException wrong)
        {
            var line = 1 + bytes.AsSpan(0, Math.Clamp(wrong.Index, 0, bytes.Length)).Count((byte)'\n');
            return Refuse(problems, line, "A letter here is not UTF-8", "save it as UTF-8; an older encoding such as Latin-1 is not taken");
        }
    }

    /// <summary>Control letters and letters that turn the reading direction would make the text look other than it is.</summary>
    private static string? Visible(string text, ProblemsFound problems)
    {
        var line = 1;
        foreach (var letter in text)
        {
            if (letter == '\n')
            {
                line++;
            }
            else if ((char.IsControl(letter) && letter is not ('\t' or '\r'))
                || letter is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u2028' or '\u2029' or '\uFEFF')
            {
                return Refuse(problems, line, $"There is an invisible letter here (U+{(int)letter:X4})", "delete it and type the line again");
            }
        }

        return text;
    }

    private static string? Refuse(ProblemsFound problems, int line, string what, string next)
    {
        problems.Error(line, 1, "", what, next);
        return null;
    }
}
