using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.CarResults;

/// <summary>A result as it is typed: what of it can be read, and what is wrong with each field.</summary>
/// <param name="name">As it is recorded.</param>
/// <param name="measures">Its values: the register's, or those of the step where the register names none.</param>
public sealed class ResultDraft(ResultKind kind, string name, IReadOnlyList<Measure> measures)
{
    /// <summary>Most letters of a note or of the name of an instrument.</summary>
    public const int MostLetters = 60;

    private readonly Dictionary<string, string> texts = [];
    private bool asked;

    public ResultKind Kind => kind;

    public IReadOnlyList<Measure> Measures => measures;

    /// <summary>Id of the instrument that was chosen, or what was typed in its place.</summary>
    public string Instrument { get; set; } = "";

    /// <summary>Why no instrument can be read; null where one can, or before anything was sent.</summary>
    public string? InstrumentProblem => asked && kind.NeedsInstrument && Chosen is null ? "Choose what it was measured with." : null;

    private ToolId? Chosen => Guid.TryParse(Instrument, out var id) ? new ToolId(id) : null;

    public string Text(string id) => texts.GetValueOrDefault(id) ?? "";

    public void Set(string id, string? text) => texts[id] = Typed.Clean(text);

    /// <summary>Why a value is none; null for a number, and for an empty field before anything was sent.</summary>
    public string? Problem(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Text(measure.Id) is not { Length: > 0 } text ? asked ? $"Type the value, in {measure.Unit}." : null
            : TypedNumber.Signed(text) is null ? $"{TypedNumber.Shown(text)} is not a number: digits and one decimal mark."
            : null;
    }

    /// <summary>Said of a value outside its limits: it is written down all the same, and is no good result.</summary>
    public string? Outside(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return TypedNumber.Signed(Text(measure.Id)) is { } value && !measure.Takes(value)
            ? $"Outside {measure.Limits()}. Read it again; recorded like this, it holds the car until it is put right."
            : null;
    }

    /// <summary>Why a note can't be taken; null where it can, and for an empty field before anything was sent.</summary>
    public string? Problem(ResultNote note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return Text(note.Id) is not { Length: > 0 } text ? asked ? "Fill this in." : null
            : note.IsDay && !DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? $"{TypedNumber.Shown(text)} is not a day."
            : note.OneOf.Count > 0 && !note.OneOf.Contains(text) ? $"Choose one of {string.Join(", ", note.OneOf)}."
            : null;
    }

    /// <summary>The result as typed; null while a field lacks something, and then every field says what.</summary>
    public ResultAsked? Read()
    {
        asked = true;
        return measures.Any(measure => Problem(measure) is not null) || kind.Notes.Any(note => Problem(note) is not null) || InstrumentProblem is not null
            ? null
            : new ResultAsked(
                name,
                [.. measures.Select(measure => new MeasuredValue(measure.Id, TypedNumber.Signed(Text(measure.Id))!.Value, measure.Unit))],
                [.. kind.Notes.Select(note => new WrittenNote(note.Id, Text(note.Id)))])
            {
                Tool = kind.NeedsInstrument ? Chosen : null,
                Instrument = kind.NeedsInstrument || Typed.Clean(Instrument).Length == 0 ? null : Typed.Clean(Instrument),
            };
    }
}
