using System.Text;

namespace ShopJobs.Domain.Tests.Procedures;

public class DocumentFormTests
{
    [Fact]
    public void A_document_over_one_megabyte_is_refused()
    {
        var loaded = Written.Load(Written.Sound + "\n# " + new string('x', 1_100_000));
        Assert.Null(loaded.Value);
        Assert.Equal("The document is larger than 1000000 bytes", Assert.Single(loaded.Problems).What);
    }

    [Fact]
    public void A_document_of_just_one_megabyte_is_taken()
    {
        var room = 1_000_000 - Encoding.UTF8.GetByteCount(Written.Sound) - 3;
        Assert.NotNull(Written.Load(Written.Sound + "\n# " + new string('x', room)).Value);
    }

    [Fact]
    public void A_byte_order_mark_is_refused() => Refused(
        [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Written.Sound)], 1, "The document starts with a byte order mark");

    [Fact]
    public void UTF_16_is_refused() => Refused(
        [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Written.Sound)], 1, "The document is UTF-16, not UTF-8");

    [Fact]
    public void Latin_1_is_refused_on_its_line() => Refused(
        Encoding.Latin1.GetBytes("code: T1\ntitle: Räder\n"), 2, "A letter here is not UTF-8");

    [Fact]
    public void An_invisible_letter_is_refused_on_its_line() => Refused(
        Encoding.UTF8.GetBytes("code: T1\ntitle: a\u202Eb\n"), 2, "There is an invisible letter here (U+202E)");

    [Fact]
    public void An_empty_document_is_refused() => Refused([], 1, "The document is empty");

    [Fact]
    public void Text_that_is_no_YAML_is_refused_where_it_stops()
    {
        var loaded = Written.Load("code: T1\ntitle: [never closed\n");
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Problems);
        Assert.StartsWith("Not readable as YAML from here on", found.What, StringComparison.Ordinal);
        Assert.InRange(found.Line, 2, 3);
    }

    [Theory]
    [InlineData("title: &name Test fit", "An anchor (&name) is not taken")]
    [InlineData("title: *name", "An alias (*name) is not taken")]
    [InlineData("title: !!str Test fit", "A tag (!name) is not taken")]
    [InlineData("title: !run Test fit", "A tag (!name) is not taken")]
    [InlineData("title: Test fit\ntitle: Again", "The key “title” comes twice, first on line 2")]
    [InlineData("? [a, b]\n: c\ntitle: Test fit", "A key is one word of at most 60 letters")]
    public void What_this_form_does_not_have_is_refused(string instead, string what)
    {
        var loaded = Written.With("title: Test fit", instead);
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Problems, problem => problem.What == what);
        Assert.InRange(found.Line, 2, 3);
    }

    [Fact]
    public void A_second_document_is_refused()
    {
        var loaded = Written.Load(Written.Sound + "\n---\ncode: T2\n");
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors);
        Assert.Equal("A second document starts here", found.What);
        Assert.Equal(Written.Sound.Count(letter => letter == '\n') + 2, found.Line);
    }

    [Fact]
    public void A_directive_is_refused() => Assert.Contains(
        Written.Load("%TAG !e! tag:example.org,2026:\n---\n" + Written.Sound).Errors, problem => problem.What.Contains("directives are not taken", StringComparison.Ordinal));

    [Fact]
    public void Lists_in_lists_without_end_are_refused_and_do_not_break_the_reader()
    {
        var loaded = Written.With("title: Test fit", "title: " + new string('[', 5_000) + new string(']', 5_000));
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors, problem => problem.What == "Lists and keys lie more than 16 deep in each other");
        Assert.Equal(2, found.Line);
    }

    [Fact]
    public void Thousands_of_unknown_keys_are_said_in_a_few_lines()
    {
        var loaded = Written.Load(string.Join('\n', Enumerable.Range(1, 20_000).Select(number => $"key{number}: x")));
        Assert.Null(loaded.Value);
        Assert.InRange(loaded.Problems.Count, 21, 40);
        Assert.Contains(loaded.Problems, problem => problem.What == "19980 more keys are not known here");
    }

    [Fact]
    public void Markup_stays_the_text_it_is()
    {
        var loaded = Written.With("title: Test fit", "title: \"<script>alert(1)</script>\"");
        Assert.Equal("<script>alert(1)</script>", loaded.Value!.Title);
    }

    [Fact]
    public void The_same_bytes_have_the_same_digest()
    {
        Assert.Equal(Written.Load(Written.Sound).Digest, Written.Load(Written.Sound).Digest);
        // SHA-256 of no bytes: FIPS 180-4 example value, as printed in many places; from memory.
        Assert.Equal("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", Written.Load([]).Digest);
    }

    private static void Refused(byte[] bytes, int line, string what)
    {
        var loaded = Written.Load(bytes);
        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Problems);
        Assert.Equal((line, what), (found.Line, found.What));
    }
}
