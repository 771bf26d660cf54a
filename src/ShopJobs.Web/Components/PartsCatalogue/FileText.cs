using System.Text;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>The text of a file: UTF-8 with or without its mark at the start, or UTF-16 with it (RFC 3629, RFC 2781).</summary>
internal static class FileText
{
    internal const string OtherEncoding =
        "The file is in another encoding than UTF-8. In the spreadsheet save it again as “CSV UTF-8”, then upload that one.";

    internal const string Workbook = "The file is a workbook and no CSV. In the spreadsheet save it as “CSV UTF-8”, then upload that one.";

    // As a zip archive begins, and with it a workbook (PKWARE's APPNOTE, from memory).
    private static readonly byte[] Zip = [(byte)'P', (byte)'K', 3, 4];

    /// <summary>The text without its mark; null with what to do where it can't be read.</summary>
    internal static string? Read(ReadOnlySpan<byte> bytes, out string? refusal)
    {
        refusal = bytes.StartsWith(Zip) ? Workbook : null;
        if (refusal is not null)
        {
            return null;
        }

        try
        {
            var text = bytes switch
            {
                [0xEF, 0xBB, 0xBF, .. var rest] => new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(rest),
                [0xFF, 0xFE, .. var rest] => new UnicodeEncoding(bigEndian: false, false, throwOnInvalidBytes: true).GetString(rest),
                [0xFE, 0xFF, .. var rest] => new UnicodeEncoding(bigEndian: true, false, throwOnInvalidBytes: true).GetString(rest),
                _ => new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes),
            };
            // A zero is in no text: it is UTF-16 without its mark, UTF-32, or a file of another kind.
            refusal = text.Contains('\0') ? OtherEncoding : null;
            return refusal is null ? text : null;
        }
        catch (DecoderFallbackException)
        {
            refusal = OtherEncoding;
            return null;
        }
    }
}
