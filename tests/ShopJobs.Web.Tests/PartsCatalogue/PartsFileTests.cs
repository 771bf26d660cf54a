using System.Globalization;
using System.Text;
using ShopJobs.Web.Components.PartsCatalogue;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>A file is read in the encodings and with the separators that spreadsheets write, or refused with what to do.</summary>
public sealed class PartsFileTests
{
    private const string Text = "Number;Maker;Name\r\nQ4;Quillon;Übermaß ≢Α\r\n";

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes(Text) },
        { "UTF-8 with its mark", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Text)] },
        { "UTF-16, small end first", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Text)] },
        { "UTF-16, big end first", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Text)] },
    };

    // Each is a valid file in another encoding, or none.
    public static TheoryData<string, byte[]> Others => new()
    {
        { "ISO 8859-1", Encoding.Latin1.GetBytes(Text.Split('≢')[0]) },
        { "UTF-8 cut in the middle of a letter", Encoding.UTF8.GetBytes(Text)[..^3] },
        { "a letter of UTF-8 that is longer than it has to be (RFC 3629, section 10)", [(byte)'a', 0xC0, 0x80] },
        { "UTF-16 without its mark", Encoding.Unicode.GetBytes("Number,Maker\nQ4,Quillon\n") },
        { "UTF-16 with half a pair", [0xFF, 0xFE, 0x00, 0xD8, 0x41, 0x00] },
        { "UTF-32", [0xFF, 0xFE, 0, 0, .. Encoding.UTF32.GetBytes("Number,Maker")] },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Every_encoding_that_is_named_gives_the_same(string encoding, byte[] bytes)
    {
        var file = PartsFile.Read(bytes, out var refusal);

        Assert.True(refusal is null, $"{encoding}: {refusal}");
        Assert.Equal(["Number", "Maker", "Name"], file!.Headings);
        Assert.Equal(["Q4", "Quillon", "Übermaß ≢Α"], Assert.Single(file.Rows).Cells);
    }

    [Fact]
    public void The_example_of_the_standard_is_read()
    {
        // RFC 3629, section 7: "A≢Α." is 41 E2 89 A2 CE 91 2E.
        byte[] bytes = [.. "n\n"u8, 0x41, 0xE2, 0x89, 0xA2, 0xCE, 0x91, 0x2E];

        Assert.Equal("A≢Α.", Assert.Single(PartsFile.Read(bytes, out _)!.Rows).Cells[0]);
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Another_encoding_is_refused_with_what_to_do(string encoding, byte[] bytes)
    {
        Assert.True(PartsFile.Read(bytes, out var refusal) is null, encoding);
        Assert.Equal("The file is in another encoding than UTF-8. In the spreadsheet save it again as “CSV UTF-8”, then upload that one.", refusal);
    }

    [Fact]
    public void A_workbook_is_named_as_one()
    {
        Assert.Null(PartsFile.Read([.. "PK\u0003\u0004"u8, 0, 0], out var refusal));
        Assert.Contains("is a workbook and no CSV", refusal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a,b;c,d", ',')]
    [InlineData("a;b;c,d", ';')]
    [InlineData("a\tb\tc,d", '\t')]
    [InlineData("\"a;;;;\",b,c", ',')]
    [InlineData("\"a\n;;;;\",b,c\n;;;;;;", ',')]
    [InlineData("a|b|c", ',')]
    [InlineData("a", ',')]
    [InlineData("", ',')]
    public void The_separator_is_found_in_the_headings(string text, char separator) => Assert.Equal(separator, PartsFile.SeparatorOf(text));

    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "zzz|yyy|xxx")] // RFC 4180, section 2, rule 1
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "zzz|yyy|xxx")] // rule 2
    [InlineData("h,h,h\r\n\"aaa\",\"bbb\",\"ccc\"\r\n", "aaa|bbb|ccc")] // rule 5
    [InlineData("h,h,h\r\n\"aaa\",\"b\r\nbb\",\"ccc\"\r\n", "aaa|b\r\nbb|ccc")] // rule 6
    [InlineData("h,h,h\r\n\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa|b\"bb|ccc")] // rule 7
    [InlineData("h,h,h\n a , b ,c\n", " a | b |c")] // rule 4: blanks are part of a field
    public void The_examples_of_RFC_4180_are_read(string text, string cells) =>
        Assert.Equal(cells, string.Join('|', Assert.Single(Read(text).Rows).Cells));

    [Fact]
    public void Rows_are_counted_as_a_spreadsheet_counts_and_empty_ones_are_passed_over() =>
        Assert.Equal([2, 5, 6], Read("a,b\n1,\"x\ny\"\n\n,\n2,y\n3,z\n").Rows.Select(row => row.Number));

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("\uFEFF", "The file is empty")]
    [InlineData("\n\n , \n", "The first row is empty")]
    [InlineData("Number,Maker", "has headings and no part under them")]
    [InlineData("Number,Maker\r\n,\r\n", "has headings and no part under them")]
    [InlineData("Number,Maker\r\nQ4,\"Quillon\r\n", "Row 2 has a quotation mark that is not closed")]
    [InlineData("Number,Maker\r\nQ4,Quillon\r\n1/2\" wide,Quillon\r\n", "Row 3 has a quotation mark")]
    [InlineData("Number,Maker\r\n\"Q4\"x,Quillon\r\n", "Row 2 has a quotation mark")]
    public void What_is_no_list_of_parts_is_refused_with_what_to_do(string text, string said)
    {
        Assert.Null(PartsFile.Read(Encoding.UTF8.GetBytes(text), out var refusal));
        Assert.Contains(said, refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void The_limits_are_taken_and_one_more_is_refused()
    {
        Assert.Equal(PartsFile.MostRows, Read(Rows(PartsFile.MostRows)).Rows.Count);
        Assert.Equal("The file has more than 20,000 rows. Split it, and upload one part after the other.", Refused(Rows(PartsFile.MostRows + 1)));
        Assert.Equal("The file has more than 20,000 rows. Split it, and upload one part after the other.", Refused(Rows(100_000)));
        Assert.Contains("more than 100 columns", Refused(new string(',', 100) + "\n1\n"), StringComparison.Ordinal);
        Assert.Contains("larger than 5 MB", Refused("a\n" + new string('x', PartsFile.MostBytes)), StringComparison.Ordinal);
    }

    private static string Rows(int count) =>
        "Number,Maker,Name\n" + string.Concat(Enumerable.Range(1, count).Select(row => string.Create(CultureInfo.InvariantCulture, $"{row},Quillon,stud\n")));

    private static PartsFile Read(string text) => PartsFile.Read(Encoding.UTF8.GetBytes(text), out var refusal) ?? throw new InvalidOperationException(refusal);

    private static string? Refused(string text)
    {
        Assert.Null(PartsFile.Read(Encoding.UTF8.GetBytes(text), out var refusal));
        return refusal;
    }
}
