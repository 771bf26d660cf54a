using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>What an entry says of a joint, in words: kinds of record are never mixed, values stand as they were entered.</summary>
public static class JointLineWords
{
    /// <summary>The entry's sentence, why it does not count, and the texts that stand beside it.</summary>
    public static string Of(JointLine line, EntryNames names, IReadOnlyDictionary<ContentDigest, string> texts)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(texts);
        var entry = line.Recorded.Entry;
        var facets = entry.Facets();
        return string.Join(' ',
        [
            EntryWords.Of(entry, names),
            .. facets.Problems.Count == 0 ? [] : new[] { $"Does not count: {string.Join(", ", facets.Problems.Select(HoldWords.Of))}." },
            .. facets.Texts.Select(text => $"{text.Label}: “{texts.GetValueOrDefault(text.Digest, "not read")}”"),
        ]);
    }

    /// <summary>What ids of this car are called.</summary>
    public static EntryNames NamesOf(CarReading reading, IReadOnlyDictionary<PersonId, string> people)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(people);
        return new EntryNames(
            reading.Now.Name,
            tool => ToolName(reading, tool),
            job => reading.State.Jobs[job].Fact.Procedure,
            (job, step) => reading.Placed(reading.State.Jobs[job]).Step(step)?.Title() ?? step,
            person => people.GetValueOrDefault(person, "somebody"))
        {
            Distance = reading.Now.Distance,
            Place = reading.Now.Places.NameOf,
        };
    }

    /// <summary>The kind of a torque record. A click is never called measured.</summary>
    public static string Of(TorqueKind kind) => kind switch
    {
        TorqueKind.SettingConfirmed => "clicked at",
        TorqueKind.Reading => "reading",
        TorqueKind.RunDown => "run-down",
        TorqueKind.AngleTurned => "angle turned",
        TorqueKind.BreakAway => "break-away",
        _ => "residual",
    };

    public static string Of(Disposition disposition) => disposition switch
    {
        Disposition.UseAsIs => "use as is",
        Disposition.Rework => "rework",
        _ => "replace",
    };

    public static string ToolName(CarReading reading, ToolId tool)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Tools.GetValueOrDefault(tool)?.Tool?.Name ?? "an unknown tool";
    }
}
