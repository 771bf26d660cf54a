using System.Globalization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>Judges one row of <c>entries</c>: against itself, and against the entry before it. Not for two threads at once.</summary>
internal sealed class EntryCheck(EntryKeysOf keysOf)
{
    private byte[] copy = new byte[4096];

    /// <summary>The row against the head before it: number and chain value.</summary>
    public static void Link(EntryRow row, Head before, List<Finding> findings) => Link(row.Head, row.Envelope, before, findings);

    /// <summary>As <see cref="Link(EntryRow, Head, List{Finding})"/>, for a row read earlier.</summary>
    public static void Link(Head stored, ReadOnlySpan<byte> envelope, Head before, List<Finding> findings)
    {
        if (stored.Number > before.Number + 1)
        {
            var (first, last) = (before.Number + 1, stored.Number - 1);
            var missing = first == last ? $"entry {first} is missing" : $"entries {first} to {last} are missing";
            findings.Add(new Finding(LogbookFault.EntryMissing, missing, first));
        }
        else if (stored.Number <= before.Number)
        {
            findings.Add(new Finding(LogbookFault.EntryTwice, "this number is there more than once or out of order"));
        }
        else if (before.Hash.Next(envelope) != stored.Hash)
        {
            findings.Add(new Finding(LogbookFault.ChainBroken, "its hash does not follow from the entry before and its own envelope"));
        }
    }

    /// <summary>The row against itself: the envelope can be read and every column beside it says the same.</summary>
    public void Row(EntryRow row, List<Finding> findings)
    {
        Envelope envelope;
        try
        {
            envelope = EnvelopeCodec.DecodeUnopened(Copied(row.Envelope));
        }
        catch (FormatException e)
        {
            findings.Add(new Finding(LogbookFault.EnvelopeUnreadable, e.Message));
            return;
        }

        Columns(row, envelope, KeysIn(envelope, findings), findings);
    }

    private EntryKeys? KeysIn(Envelope envelope, List<Finding> findings)
    {
        try
        {
            return keysOf(envelope.Kind, envelope.Version, envelope.Payload);
        }
        catch (UnknownEntryException e)
        {
            findings.Add(new Finding(LogbookFault.EntryUnknown, e.Message));
        }
        catch (Exception e)
        {
            // A payload made up outside the program can break its reading in any way, and must be named, not stop the rest.
            findings.Add(new Finding(LogbookFault.EnvelopeUnreadable, $"its payload can't be read: {e.Message}"));
        }

        return null;
    }

    private static void Columns(EntryRow row, Envelope envelope, EntryKeys? keys, List<Finding> findings)
    {
        var at = MicrosecondClock.ToStored(envelope.At);
        Same(row.Is(1, envelope.Logbook.KindName), row, 1, "owner_kind", envelope.Logbook.KindName, findings);
        Same(row.Is(2, envelope.Logbook.Owner), row, 2, "owner", envelope.Logbook.Owner, findings);
        Same(row.Is(3, envelope.Number), row, 3, "number", envelope.Number, findings);
        Same(row.Is(6, at), row, 6, "at", at, findings);
        Same(row.Is(7, envelope.Person.Value), row, 7, "person", envelope.Person.Value, findings);
        Same(row.Is(8, envelope.SessionPerson?.Value), row, 8, "session_person", envelope.SessionPerson?.Value, findings);
        Same(row.Is(9, envelope.Device.Value), row, 9, "device", envelope.Device.Value, findings);
        Same(row.Is(10, envelope.Command.Value), row, 10, "command", envelope.Command.Value, findings);
        Same(row.Is(11, envelope.Kind), row, 11, "kind", envelope.Kind, findings);
        Same(row.Is(12, envelope.Version), row, 12, "version", envelope.Version, findings);
        if (keys is null)
        {
            return;
        }

        Same(row.Is(13, keys.Job?.Value), row, 13, "job", keys.Job?.Value, findings);
        Same(row.Is(14, keys.Joint), row, 14, "joint", keys.Joint, findings);
        Same(row.Is(15, keys.Place), row, 15, "place", keys.Place, findings);
        Same(row.Is(16, keys.Position), row, 16, "position", keys.Position, findings);
        Same(row.Is(17, keys.Tool?.Value), row, 17, "tool", keys.Tool?.Value, findings);
    }

    private static void Same<T>(bool same, EntryRow row, int column, string name, T envelope, List<Finding> findings)
    {
        if (!same)
        {
            var said = string.Format(CultureInfo.InvariantCulture, "{0}", envelope is null ? "nothing" : envelope);
            findings.Add(new Finding(LogbookFault.ColumnDiffers, $"column {name} says {row.Shown(column)}, its envelope says {said}"));
        }
    }

    private ReadOnlyMemory<byte> Copied(ReadOnlySpan<byte> envelope)
    {
        if (copy.Length < envelope.Length)
        {
            copy = new byte[envelope.Length * 2];
        }

        envelope.CopyTo(copy);
        return copy.AsMemory(0, envelope.Length);
    }
}

/// <summary>A fault at the entry looked at, or at another number of the same logbook.</summary>
internal readonly record struct Finding(LogbookFault Fault, string What, long? At = null);
