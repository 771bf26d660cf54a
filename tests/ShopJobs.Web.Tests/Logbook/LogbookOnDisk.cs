using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Logbook.Verify;

namespace ShopJobs.Web.Tests.Logbook;

/// <summary>A migrated database in a folder of its own, and as many programs on it as a test opens.</summary>
internal sealed class LogbookOnDisk : IDisposable
{
    public static readonly LogbookId Car = new(LogbookKind.Car, Guid.Parse("c0000000-0000-4000-8000-00000000000c"));
    public static readonly LogbookId OtherCar = new(LogbookKind.Car, Guid.Parse("d0000000-0000-4000-8000-00000000000d"));
    public static readonly DateTimeOffset Morning = new(2026, 3, 2, 8, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("logbook-");
    private readonly List<LogbookProgram> opened = [];

    public LogbookOnDisk()
    {
        using var shop = new ShopDbContext(new DbContextOptionsBuilder<ShopDbContext>().UseSqlite($"Data Source={File};Pooling=False").Options);
        shop.Database.Migrate();
    }

    public string File => Path.Combine(folder.FullName, "shop.db");

    public FakeTimeProvider Time { get; } = new(Morning);

    /// <summary>A program of its own on the file: nothing shared with the others but the disk.</summary>
    public LogbookProgram Open(Func<Task>? pause = null, Action? beforeCommit = null, Action<SqliteConnection>? writerOpened = null, int patienceSeconds = 5, ILogger<LogbookNotices>? log = null)
    {
        var program = new LogbookProgram(File, Time, pause, beforeCommit, writerOpened, patienceSeconds, log);
        opened.Add(program);
        return program;
    }

    /// <summary>The owner of the file at work with a SQLite shell.</summary>
    public int Sql(string sql)
    {
        using var connection = Shell();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteNonQuery();
    }

    /// <summary>The owner of the file drops every trigger, edits, and puts the triggers back as they were.</summary>
    public void Tamper(string edit)
    {
        using var connection = Shell();
        Execute("PRAGMA foreign_keys = OFF");
        var triggers = new List<(string Name, string Sql)>();
        using (var command = connection.CreateCommand())
        {
            command.CommandText = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger'";
            using var rows = command.ExecuteReader();
            while (rows.Read())
            {
                triggers.Add((rows.GetString(0), rows.GetString(1)));
            }
        }

        triggers.ForEach(trigger => Execute($"DROP TRIGGER {trigger.Name}"));
        Execute(edit);
        triggers.ForEach(trigger => Execute(trigger.Sql));

        void Execute(string sql)
        {
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }
    }

    /// <summary>The first column of the first row.</summary>
    public T Ask<T>(string sql)
    {
        using var connection = Shell();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (T)command.ExecuteScalar()!;
    }

    /// <summary>The files as they are on the disk now, in another folder: what a kill of the process leaves.</summary>
    public LogbookOnDisk AsLeftByAKill() => new(this);

    public VerifyReport Verify() => new LogbookVerifier(File, NoteBook.KeysOf).Verify();

    /// <summary>Ends every program opened so far.</summary>
    public void Close()
    {
        opened.ForEach(program => program.Dispose());
        opened.Clear();
    }

    public void Dispose()
    {
        Close();
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    private LogbookOnDisk(LogbookOnDisk running)
    {
        foreach (var name in (string[])["shop.db", "shop.db-wal"])
        {
            System.IO.File.Copy(Path.Combine(running.folder.FullName, name), Path.Combine(folder.FullName, name));
        }
    }

    private SqliteConnection Shell()
    {
        var connection = new SqliteConnection($"Data Source={File};Pooling=False");
        connection.Open();
        return connection;
    }
}

/// <summary>Writer, reader and notices of one running program.</summary>
internal sealed class LogbookProgram : IDisposable
{
    private static readonly Stamp Stamp = new(
        new PersonId(Guid.Parse("e0000000-0000-4000-8000-00000000000e")),
        null,
        new DeviceId(Guid.Parse("f0000000-0000-4000-8000-00000000000f")));

    private readonly LogbookDatabase database;

    public LogbookProgram(string file, TimeProvider time, Func<Task>? pause, Action? beforeCommit, Action<SqliteConnection>? writerOpened, int patienceSeconds, ILogger<LogbookNotices>? log)
    {
        database = new LogbookDatabase(file) { WriterOpened = writerOpened, Patience = TimeSpan.FromSeconds(patienceSeconds) };
        var cache = new FoldCache();
        Notices = new LogbookNotices(log ?? NullLogger<LogbookNotices>.Instance);
        Writer = new LogbookWriter(database, cache, Notices, time) { BetweenDecisionAndAppend = pause, BeforeCommit = beforeCommit };
        Snapshots = new LogbookSnapshots(database, cache, time);
    }

    public LogbookNotices Notices { get; }

    public LogbookWriter Writer { get; }

    public LogbookSnapshots Snapshots { get; }

    public Task<RunResult> RunAsync(Func<LogbookReader, Decision> decide, CommandId? id = null, string request = "request") =>
        Writer.RunAsync(id ?? new CommandId(Guid.NewGuid()), NoteBook.Bytes(request), Stamp, decide, CancellationToken.None);

    /// <summary>Notes something in a car's logbook.</summary>
    public Task<RunResult> NoteAsync(string text, CommandId? id = null, LogbookId? logbook = null, string? request = null)
    {
        var book = logbook ?? LogbookOnDisk.Car;
        return RunAsync(
            reader =>
            {
                reader.Fold(book, NoteBook.Notes);
                return new Decision.Accept([NoteBook.Note(book, text)], [], NoteBook.Answer($"noted {text}"));
            },
            id,
            request ?? text);
    }

    /// <summary>Notes the digest of a content and keeps the content.</summary>
    public async Task<ContentDigest> KeepAsync(string content)
    {
        var kept = NewContent.Of(NoteBook.Bytes(content).Span);
        var result = await RunAsync(reader =>
        {
            reader.Fold(LogbookOnDisk.Car, NoteBook.Notes);
            return new Decision.Accept([NoteBook.Note(LogbookOnDisk.Car, kept.Digest.Hex)], [kept], NoteBook.Answer(""));
        });
        Assert.IsType<RunResult.Saved>(result);
        return kept.Digest;
    }

    public IReadOnlyList<string> Notes(LogbookId? logbook = null) =>
        Snapshots.Read(reader => reader.Fold(logbook ?? LogbookOnDisk.Car, NoteBook.Notes));

    public void Dispose()
    {
        Writer.Dispose();
        Notices.Dispose();
        database.Dispose();
    }
}
