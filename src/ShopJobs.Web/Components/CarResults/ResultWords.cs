using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CarResults;

/// <summary>How a result stands.</summary>
public enum ResultStandingKind
{
    /// <summary>It has to be measured: work it depends on was done, or what was measured is no good result.</summary>
    ToBeDone,

    /// <summary>The instrument it was measured with is in doubt.</summary>
    InDoubt,

    Stands,

    /// <summary>Nobody here ever recorded it.</summary>
    NeverRecorded,
}

/// <summary>A result as a screen shows it.</summary>
/// <param name="Name">As it is recorded.</param>
/// <param name="Book">Its newest record; null where there is none.</param>
public sealed record ResultLook(string Name, ResultStandingKind Standing, ResultBook? Book)
{
    /// <summary>Every result of the register, and any other that the car's book has; what is to be done first.</summary>
    public static IReadOnlyList<ResultLook> Of(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var named = reading.Now.Register.AllResults.SelectMany(kind => kind.OfPlace
            ? reading.Now.Register.PlacesOf(kind).Select(place => kind.At(place))
            : [kind.Key]);
        return [.. named.Union(reading.State.Results.Keys).Union(reading.State.Undone.Keys).Select(name => One(reading, name)).OrderBy(look => look.Standing)];
    }

    private static ResultLook One(CarReading reading, string name)
    {
        var book = reading.State.Results.GetValueOrDefault(name);
        var standing = reading.State.Undone.ContainsKey(name) || book is { VoidBy: > 0 } ? ResultStandingKind.ToBeDone
            : book is null ? ResultStandingKind.NeverRecorded
            : book.DoubtsOn(reading.Now.Tool).Any() ? ResultStandingKind.InDoubt
            : ResultStandingKind.Stands;
        return new ResultLook(name, standing, book);
    }
}

/// <summary>What a screen says of a result.</summary>
public static class ResultWords
{
    /// <summary>In a few words: "stands", "to be measured".</summary>
    public static string Words(this ResultStandingKind standing) => standing switch
    {
        ResultStandingKind.ToBeDone => "to be measured",
        ResultStandingKind.InDoubt => "in doubt",
        ResultStandingKind.Stands => "valid",
        ResultStandingKind.NeverRecorded => "never recorded here",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "Not a standing of a result."),
    };

    /// <summary>Why it has to be measured, or what to do about its doubt; null where it stands, or nobody asked for it.</summary>
    public static string? Why(this ResultLook look, CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(reading);
        return look switch
        {
            { Standing: ResultStandingKind.InDoubt } => "The instrument it was measured with is in doubt: measure again with another one, or the lead clears it.",
            { Standing: ResultStandingKind.ToBeDone, Book.Fact.Problems: { Count: > 0 } problems } =>
                $"The last one is no good result: {string.Join(", ", problems.Select(HoldWords.Of))}.",
            { Standing: ResultStandingKind.ToBeDone } when reading.Now.Register.ResultOf(look.Name).AfterDrive && IsUndriven(look, reading) =>
                "Only a drive gives it: release the car to a road test first.",
            { Standing: ResultStandingKind.ToBeDone } => "A joint it depends on was opened.",
            _ => null,
        };
    }

    /// <summary>True where it can't be recorded before the car was driven.</summary>
    public static bool IsUndriven(this ResultLook look, CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Now.Register.ResultOf(look.Name).AfterDrive
            && reading.State.Undone.TryGetValue(look.Name, out var since) && !reading.State.DrivenSince(since);
    }

    /// <summary>Its figures: "Toe, front-left: 0.05 deg".</summary>
    public static IEnumerable<string> Figures(this ResultLook look, CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(reading);
        if (look.Book is not { Fact: var fact })
        {
            return [];
        }

        var kind = reading.Now.Register.ResultOf(look.Name);
        return fact.Values.Select(value => $"{kind.Measures.FirstOrDefault(measure => measure.Id == value.Name)?.Text ?? value.Name}: {value.Amount()}")
            .Concat((fact.Notes ?? []).Select(note => $"{kind.Notes.FirstOrDefault(one => one.Id == note.Name)?.Text ?? note.Name}: {note.Text}"));
    }

    /// <summary>Who recorded it, when and with what; null where nobody did.</summary>
    public static string? By(this ResultLook look, CarReading reading, ShopClock clock, IReadOnlyDictionary<PersonId, string> names)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(names);
        if (look.Book is not { } book)
        {
            return null;
        }

        var with = book.Fact.Tool is { } tool ? reading.Tools.GetValueOrDefault(tool)?.Name : book.Fact.Instrument;
        return $"Recorded {clock.Words(book.At)} by {names.GetValueOrDefault(book.Person, "somebody")}{(with is null ? "" : $", with {with}")}";
    }
}
