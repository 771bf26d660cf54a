using System.Text;
using ShopJobs.Domain.Logbook;
using SQLitePCL;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>The row of <c>entries</c> a statement stands on, column by column as <see cref="Columns"/> has them.</summary>
internal readonly ref struct EntryRow(sqlite3_stmt row)
{
    public const string Columns =
        "id, owner_kind, owner, number, hash, envelope, at, person, session_person, device, command, kind, version, job, joint, place, position, tool";

    private const int OwnerKind = 1;
    private const int Owner = 2;

    public long Id => raw.sqlite3_column_int64(row, 0);

    /// <summary>The logbook the row's own columns name.</summary>
    public LogbookId? Logbook
    {
        get
        {
            Span<char> kind = stackalloc char[8];
            return Encoding.UTF8.TryGetChars(raw.sqlite3_column_blob(row, OwnerKind), kind, out var length)
                && LogbookId.TryParseKind(kind[..length], out var known)
                && Guid.TryParse(raw.sqlite3_column_blob(row, Owner), out var owner)
                    ? new LogbookId(known, owner)
                    : null;
        }
    }

    public long Number => raw.sqlite3_column_int64(row, 3);

    public ReadOnlySpan<byte> Hash => raw.sqlite3_column_blob(row, 4);

    public ReadOnlySpan<byte> Envelope => raw.sqlite3_column_blob(row, 5);

    /// <summary>Number and chain value as stored.</summary>
    public Head Head => new(Number, Hash.Length == EntryHash.Size ? new EntryHash(Hash) : default);

    /// <summary>The column as it would be shown to a person.</summary>
    public string Shown(int column) => raw.sqlite3_column_text(row, column).utf8_to_string() ?? "nothing";

    public bool Is(int column, long? expected) => expected is { } number
        ? raw.sqlite3_column_type(row, column) == raw.SQLITE_INTEGER && raw.sqlite3_column_int64(row, column) == number
        : raw.sqlite3_column_type(row, column) == raw.SQLITE_NULL;

    public bool Is(int column, string? expected)
    {
        const int OnStack = 256;
        if (expected is null || raw.sqlite3_column_type(row, column) != raw.SQLITE_TEXT)
        {
            return expected is null && raw.sqlite3_column_type(row, column) == raw.SQLITE_NULL;
        }

        var most = Encoding.UTF8.GetMaxByteCount(expected.Length);
        Span<byte> bytes = most <= OnStack ? stackalloc byte[OnStack] : new byte[most];
        return raw.sqlite3_column_blob(row, column).SequenceEqual(bytes[..Encoding.UTF8.GetBytes(expected, bytes)]);
    }

    public bool Is(int column, Guid? expected)
    {
        const int Length = 36;
        if (expected is not { } id || raw.sqlite3_column_type(row, column) != raw.SQLITE_TEXT)
        {
            return expected is null && raw.sqlite3_column_type(row, column) == raw.SQLITE_NULL;
        }

        Span<byte> bytes = stackalloc byte[Length];
        id.TryFormat(bytes, out _, "D");
        Ascii.ToUpperInPlace(bytes, out _);
        return raw.sqlite3_column_blob(row, column).SequenceEqual(bytes);
    }
}
