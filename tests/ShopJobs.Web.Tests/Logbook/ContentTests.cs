using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

public sealed class ContentTests : IDisposable
{
    private const string Name = "Rosalind Ortega of the invented shop";

    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task Content_is_read_back_by_the_digest_its_entry_names()
    {
        var program = disk.Open();
        var digest = await program.KeepAsync(Name);
        Assert.Equal(Name, NoteBook.Text(Assert.IsType<StoredContent.Present>(Read(digest)).Bytes));
        Assert.Equal([digest.Hex], program.Notes());
    }

    [Fact]
    public async Task Equal_content_has_unequal_digests()
    {
        var program = disk.Open();
        Assert.NotEqual(await program.KeepAsync(Name), await program.KeepAsync(Name));
    }

    [Fact]
    public async Task Erased_content_is_gone_and_its_entry_stands()
    {
        var program = disk.Open();
        var digest = await program.KeepAsync(Name);
        Assert.True(IsInTheFiles(Name));
        disk.Time.Advance(TimeSpan.FromDays(1));
        await EraseAsync(program, digest);

        Assert.Equal(new StoredContent.Erased(LogbookOnDisk.Morning.UtcDateTime.AddDays(1)), Read(digest));
        Assert.Equal([digest.Hex, "erased"], program.Notes());
        Assert.False(IsInTheFiles(Name));
    }

    [Fact]
    public async Task Content_erased_while_somebody_reads_is_gone_after_the_next_command()
    {
        var program = disk.Open(patienceSeconds: 1);
        var digest = await program.KeepAsync(Name);
        disk.Open().Snapshots.Read(reader =>
        {
            reader.Head(LogbookOnDisk.Car);
            EraseAsync(program, digest).GetAwaiter().GetResult();
            return true;
        });
        Assert.IsType<StoredContent.Erased>(Read(digest));
        Assert.True(IsInTheFiles(Name));

        await program.NoteAsync("next");
        Assert.False(IsInTheFiles(Name));
    }

    [Fact]
    public async Task Erasing_twice_keeps_the_first_instant()
    {
        var program = disk.Open();
        var digest = await program.KeepAsync(Name);
        await EraseAsync(program, digest);
        disk.Time.Advance(TimeSpan.FromDays(1));
        await EraseAsync(program, digest);
        Assert.Equal(new StoredContent.Erased(LogbookOnDisk.Morning.UtcDateTime), Read(digest));
    }

    [Fact]
    public async Task Content_changed_outside_the_program_is_told_from_what_was_kept()
    {
        var digest = await disk.Open().KeepAsync(Name);
        disk.Sql("DROP TRIGGER content_is_only_erased; UPDATE content SET bytes = x'41'");
        Assert.IsType<StoredContent.Altered>(Read(digest));
        disk.Sql("DROP TRIGGER content_is_not_deleted; DELETE FROM content");
        Assert.IsType<StoredContent.Missing>(Read(digest));
    }

    private static async Task EraseAsync(LogbookProgram program, ContentDigest digest)
    {
        var result = await program.RunAsync(reader =>
        {
            reader.Fold(LogbookOnDisk.Car, NoteBook.Notes);
            return new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, "erased")], [], NoteBook.Answer("")) { Erase = [digest] };
        });
        Assert.IsType<RunResult.Saved>(result);
    }

    private StoredContent Read(ContentDigest digest) => disk.Open().Snapshots.Read(reader => reader.Content(digest));

    private bool IsInTheFiles(string text) =>
        Directory.GetFiles(Path.GetDirectoryName(disk.File)!).Any(file => Bytes(file).AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) >= 0);

    private static byte[] Bytes(string file)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
