using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Intake;

/// <summary>How a system was found, as it is typed. Every field may stay empty: what nobody saw is not written down.</summary>
public sealed class AsFoundDraft(string system, ResultKind sheet)
{
    private readonly Dictionary<string, string> texts = [];
    private bool asked;

    /// <summary>True where it is said that nobody knows it.</summary>
    public bool IsUnknown { get; set; }

    /// <summary>What else was seen.</summary>
    public string Words { get; set; } = "";

    /// <summary>How the customer was told that it is unknown.</summary>
    public string Told { get; set; } = "";

    public string Text(string id) => texts.GetValueOrDefault(id) ?? "";

    public void Set(string id, string? text) => texts[id] = Typed.Clean(text);

    /// <summary>Why a value is none; null for a number and for an empty field.</summary>
    public string? Problem(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Text(measure.Id) is { Length: > 0 } text && TypedNumber.Signed(text) is null
            ? $"{TypedNumber.Shown(text)} is not a number: digits and one decimal mark, in {measure.Unit}."
            : null;
    }

    /// <summary>Why nothing can be written down; null where it can, or before it was tried.</summary>
    public string? Refusal => !asked ? null
        : IsUnknown ? TypedText.Of(Told) is null ? "Write how the customer was told." : null
        : IsEmpty ? "Nothing is filled in. Write what you saw, or that it is unknown." : null;

    private bool IsEmpty => texts.Values.All(text => text.Length == 0) && TypedText.Of(Words) is null;

    /// <summary>The command with the texts kept beside it; null while a field lacks something.</summary>
    public (RecordAsFound Command, IReadOnlyList<NewContent> Contents)? Read()
    {
        asked = true;
        if (Refusal is not null || (!IsUnknown && sheet.Measures.Any(measure => Problem(measure) is not null)))
        {
            return null;
        }

        if (IsUnknown)
        {
            var told = TypedText.Of(Told)!;
            return (new RecordAsFound(system, []) { Told = told.Digest }, [told]);
        }

        var words = TypedText.Of(Words);
        return (
            new RecordAsFound(system, [.. sheet.Measures.Where(measure => Text(measure.Id).Length > 0).Select(measure => new MeasuredValue(measure.Id, TypedNumber.Signed(Text(measure.Id))!.Value, measure.Unit))])
            {
                Notes = sheet.Notes.Where(note => Text(note.Id).Length > 0).Select(note => new WrittenNote(note.Id, Text(note.Id))).ToList() is { Count: > 0 } notes ? notes : null,
                Words = words?.Digest,
            },
            words is null ? [] : [words]);
    }
}
