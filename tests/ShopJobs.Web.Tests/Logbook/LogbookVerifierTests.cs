using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Logbook.Verify;

namespace ShopJobs.Web.Tests.Logbook;

/// <summary>Edits behind the program's back: the owner of the file drops the guards, changes something, and puts them back.</summary>
public sealed class LogbookVerifierTests : IDisposable
{
    private const string Other = "owner = 'D0000000-0000-4000-8000-00000000000D'";

    private readonly LogbookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_book_nobody_touched_has_no_problems()
    {
        await FillAsync();
        var report = disk.Verify();
        Assert.Empty(report.Problems);
        Assert.Equal([5, 3], report.Heads.OrderBy(head => head.Key.ToString(), StringComparer.Ordinal).Select(head => head.Value.Number));
        Assert.Equal((1, 1), (report.Contents, report.Erased));
    }

    [Fact]
    public void An_empty_book_has_no_problems()
    {
        var report = disk.Verify();
        Assert.Empty(report.Problems);
        Assert.Empty(report.Heads);
    }

    public static TheoryData<string, string[]> Edits => new()
    {
        { Envelope("note two", "note twa", 2), ["2 ChainBroken"] },
        { Envelope("\"version\":1", "\"version\":9", 2), ["2 ChainBroken", "2 ColumnDiffers", "2 EntryUnknown"] },
        { Envelope("\"text\"", "\"word\"", 2), ["2 ChainBroken", "2 EnvelopeUnreadable"] },
        { Envelope("\"number\":2", "\"number\": 2", 2), ["2 ChainBroken", "2 EnvelopeUnreadable"] },
        { "UPDATE entries SET envelope = x'FF' WHERE number = 2 AND car", ["2 ChainBroken", "2 EnvelopeUnreadable"] },
        { "UPDATE entries SET tool = 'B0000000-0000-4000-8000-00000000000C' WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET tool = lower(tool) WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET tool = NULL, job = NULL WHERE number = 2 AND car", ["2 ColumnDiffers", "2 ColumnDiffers"] },
        { "UPDATE entries SET joint = 'wheel.stud' WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET place = 'front-right' WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET position = 4 WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET at = at + 1 WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET person = device WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET session_person = person WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET device = person WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET command = person WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET kind = 'other' WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET version = 2 WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE entries SET hash = zeroblob(32) WHERE number = 2 AND car", ["2 ChainBroken", "3 ChainBroken"] },
        { "UPDATE entries SET hash = zeroblob(32) WHERE number = 5 AND car", ["5 ChainBroken", " HeadDiffers"] },
        { "UPDATE heads SET hash = zeroblob(32) WHERE car", [" HeadDiffers"] },
        { "UPDATE heads SET number = 4, hash = (SELECT hash FROM entries WHERE number = 4 AND car) WHERE car", [" HeadDiffers"] },
        { "DELETE FROM heads WHERE car", [" HeadDiffers"] },
        { "DELETE FROM entries WHERE number = 2 AND car", ["2 EntryMissing"] },
        { "DELETE FROM entries WHERE number < 4 AND car", ["1 EntryMissing"] },
        { "DELETE FROM entries WHERE number = 5 AND car", [" HeadDiffers"] },
        { "DELETE FROM entries WHERE car", [" HeadDiffers"] },
        {
            "UPDATE entries SET number = 99 WHERE number = 2 AND car; UPDATE entries SET number = 2 WHERE number = 3 AND car; UPDATE entries SET number = 3 WHERE number = 99 AND car",
            ["2 ChainBroken", "2 ColumnDiffers", "3 ChainBroken", "3 ColumnDiffers", "4 ChainBroken"]
        },
        { $"UPDATE entries SET owner = 'E0000000-0000-4000-8000-00000000000E' WHERE number = 2 AND car", ["1 EntryMissing", "2 ColumnDiffers", "2 EntryMissing", " HeadDiffers"] },
        { "UPDATE entries SET owner = 'nobody' WHERE number = 2 AND car", ["2 EntryMissing", " NoLogbook"] },
        { "UPDATE entries SET owner = lower(owner) WHERE number = 2 AND car", ["2 ColumnDiffers"] },
        { "UPDATE content SET bytes = x'41' WHERE bytes IS NOT NULL", [" ContentAltered"] },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public async Task Each_edit_is_found_where_it_was_made(string edit, string[] expected)
    {
        await FillAsync();
        disk.Close();
        disk.Tamper(edit.Replace(" car", $" NOT {Other}", StringComparison.Ordinal));

        var problems = disk.Verify().Problems;
        Assert.Equal(expected.Order(StringComparer.Ordinal), problems.Select(problem => $"{problem.Number} {problem.Fault}").Order(StringComparer.Ordinal));
        Assert.DoesNotContain(problems, problem => problem.Logbook == LogbookOnDisk.OtherCar);
    }

    [Fact]
    public void A_guard_taken_away_is_a_problem()
    {
        disk.Sql("DROP TRIGGER entries_are_not_changed");
        Assert.Equal("trigger entries_are_not_changed is missing", Assert.Single(disk.Verify().Problems).ToString());
    }

    [Fact]
    public async Task One_logbook_is_verified_without_the_others()
    {
        await FillAsync();
        disk.Tamper($"UPDATE entries SET position = 4 WHERE number = 2 AND {Other}");
        var verifier = new LogbookVerifier(disk.File, NoteBook.KeysOf);

        Assert.Empty(verifier.Verify(LogbookOnDisk.Car).Problems);
        var problem = Assert.Single(verifier.Verify(LogbookOnDisk.OtherCar).Problems);
        Assert.Equal("car:d0000000-0000-4000-8000-00000000000d entry 2: column position says 4, its envelope says 3", problem.ToString());
    }

    [Fact]
    public void A_logbook_that_is_not_there_is_a_problem() =>
        Assert.Single(new LogbookVerifier(disk.File, NoteBook.KeysOf).Verify(LogbookOnDisk.Car).Problems);

    [Fact]
    public async Task A_cut_tail_is_found_against_a_head_kept_outside()
    {
        await FillAsync();
        var quoted = Quote(5);
        disk.Tamper($"""
            DELETE FROM entries WHERE number = 5 AND NOT {Other};
            UPDATE heads SET number = 4, hash = (SELECT hash FROM entries WHERE number = 4 AND NOT {Other}) WHERE NOT {Other}
            """);

        Assert.Empty(disk.Verify().Problems);
        Assert.Equal("it was quoted and is not in the book: the end was cut off", Against(quoted)?.What);
    }

    [Fact]
    public async Task A_book_wholly_rewritten_is_found_against_a_head_kept_outside()
    {
        await FillAsync();
        var quoted = Quote(3);
        Rewrite("note two", "note twa");

        Assert.Empty(disk.Verify().Problems);
        Assert.Equal((3, LogbookFault.NotAsQuoted), (Against(quoted)?.Number, Against(quoted)!.Fault));
    }

    [Fact]
    public async Task A_head_quoted_as_it_is_agrees_though_the_book_has_grown()
    {
        await FillAsync();
        var quoted = Quote(5);
        await disk.Open().NoteAsync("later");
        Assert.Null(Against(quoted));
    }

    [Fact]
    public async Task A_large_book_is_read_in_parts_and_still_one_chain()
    {
        await FillAsync();
        Multiply(41_000);
        Assert.Empty(disk.Verify().Problems);
        Assert.Equal(41_000, disk.Verify().Heads[LogbookOnDisk.Car].Number);

        disk.Tamper("UPDATE entries SET hash = zeroblob(32) WHERE number = 20500");
        Assert.Equal(["20500 ChainBroken", "20501 ChainBroken"], disk.Verify().Problems.Select(problem => $"{problem.Number} {problem.Fault}"));
    }

    [Fact]
    public async Task Verifying_writes_nothing()
    {
        await FillAsync();
        disk.Close();
        var before = File.ReadAllBytes(disk.File);
        disk.Verify();
        Assert.Equal(before, File.ReadAllBytes(disk.File));
    }

    private static string Envelope(string from, string to, int number) =>
        $"UPDATE entries SET envelope = CAST(replace(CAST(envelope AS TEXT), '{from}', '{to}') AS BLOB) WHERE number = {number} AND car";

    private Head Quote(long number) => disk.Open().Snapshots.Read(reader =>
        reader.Entries(LogbookOnDisk.Car, 0, (int)number).Aggregate(default(Head), (head, entry) => head.Next(EnvelopeCodec.Encode(entry))));

    private LogbookProblem? Against(Head quoted) => new LogbookVerifier(disk.File, NoteBook.KeysOf).VerifyAgainst(LogbookOnDisk.Car, quoted);

    private async Task FillAsync()
    {
        var program = disk.Open();
        foreach (var text in (string[])["note one", "note two", "note three"])
        {
            await program.NoteAsync(text);
            await program.NoteAsync(text, logbook: LogbookOnDisk.OtherCar);
        }

        await program.KeepAsync("kept");
        var erased = await program.KeepAsync("erased");
        await program.RunAsync(_ => new Decision.Accept([], [], NoteBook.Answer("")) { Erase = [erased] });
    }

    /// <summary>What somebody can do who knows the hash: change an entry and make the chain right again.</summary>
    private void Rewrite(string from, string to)
    {
        var head = default(Head);
        var edits = new List<string>();
        foreach (var entry in disk.Open().Snapshots.Read(reader => reader.Entries(LogbookOnDisk.Car, 0, 100)))
        {
            var payload = NoteBook.Bytes(NoteBook.Text(entry.Payload).Replace(from, to, StringComparison.Ordinal));
            var bytes = EnvelopeCodec.Encode(entry with { Payload = payload });
            head = head.Next(bytes);
            edits.Add($"UPDATE entries SET envelope = x'{Convert.ToHexString(bytes)}', hash = x'{head.Hash}' WHERE number = {entry.Number} AND NOT {Other}");
        }

        edits.Add($"UPDATE heads SET hash = x'{head.Hash}' WHERE NOT {Other}");
        disk.Tamper(string.Join(";\n", edits));
    }

    /// <summary>Lengthens the car's logbook with sound entries to this number.</summary>
    private void Multiply(long upTo)
    {
        var head = disk.Verify().Heads[LogbookOnDisk.Car];
        var last = disk.Open().Snapshots.Read(reader => reader.Entries(LogbookOnDisk.Car, head.Number - 1, 1))[0];
        using var database = new LogbookDatabase(disk.File);
        using var session = new AppendSession(database.OpenWriter());
        using var transaction = session.Begin();
        while (head.Number < upTo)
        {
            var envelope = last with { Number = head.Number + 1 };
            var bytes = EnvelopeCodec.Encode(envelope);
            head = head.Next(bytes);
            session.Append(envelope, bytes, head.Hash, NoteBook.KeysOf(envelope.Kind, envelope.Version, envelope.Payload));
        }

        transaction.Commit();
    }
}
