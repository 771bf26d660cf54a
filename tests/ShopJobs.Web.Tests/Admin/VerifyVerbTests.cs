using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Admin;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Tests.Logbook;

namespace ShopJobs.Web.Tests.Admin;

public sealed class VerifyVerbTests : IDisposable
{
    private static readonly string Car = LogbookOnDisk.Car.ToString();

    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_sound_book_is_listed_and_ends_with_0()
    {
        var saved = await AddCarConditionAsync();
        var (code, output) = Verify();

        Assert.Equal(0, code);
        Assert.Contains($"{Car} 1:{saved.Hash}", output, StringComparison.Ordinal);
        Assert.Contains("1 logbooks, 0 contents, 0 erased: 0 problems.", output, StringComparison.Ordinal);
        Assert.Contains("only shows with --against", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_edit_outside_the_program_is_named_and_ends_with_1()
    {
        await AddCarConditionAsync();
        disk.Tamper("UPDATE entries SET place = 'front-left'");
        var (code, output) = Verify();

        Assert.Equal(1, code);
        Assert.Contains($"{Car} entry 1: column place says front-left, its envelope says nothing", output, StringComparison.Ordinal);
        Assert.Contains("1 problems.", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_quoted_head_is_compared()
    {
        var saved = await AddCarConditionAsync();
        Assert.Equal(0, Verify(Car, $"1:{saved.Hash}").Code);
        var (code, output) = Verify(Car, $"2:{saved.Hash}");
        Assert.Equal(1, code);
        Assert.Contains($"{Car} entry 2: it was quoted and is not in the book", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lift:3", null, "\"lift:3\" names no logbook")]
    [InlineData(null, "1:00", "--against compares one logbook")]
    [InlineData("car:c0000000-0000-4000-8000-00000000000c", "1:00", "\"1:00\" is no entry")]
    [InlineData("car:c0000000-0000-4000-8000-00000000000c", null, "there is no such logbook")]
    public void What_it_was_asked_wrongly_is_said(string? logbook, string? against, string answer)
    {
        var (code, output) = Verify(logbook, against);
        Assert.Equal(1, code);
        Assert.Contains(answer, output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_a_shop_is_said_and_not_made()
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        var file = Path.Combine(Path.GetDirectoryName(disk.File)!, "elsewhere", "shop.db");
        Assert.Equal(1, VerifyVerb.Run(file, null, null, output));
        Assert.Contains("There is no shop at", output.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.GetDirectoryName(file)));
    }

    private (int Code, string Output) Verify(string? logbook = null, string? against = null)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        return (VerifyVerb.Run(disk.File, logbook, against, output), output.ToString());
    }

    private async Task<AppendedEntry> AddCarConditionAsync()
    {
        var (kind, version, payload) = EntryCodec.Encode(new CarConditionDeclared([]));
        var result = await disk.Open().RunAsync(reader =>
        {
            reader.Head(LogbookOnDisk.Car);
            var entry = new NewEntry(LogbookOnDisk.Car, kind, version, payload, EntryCodec.KeysOf(kind, version, payload));
            return new Decision.Accept([entry], [], NoteBook.Answer(""));
        });
        return Assert.Single(Assert.IsType<RunResult.Saved>(result).Entries);
    }
}
