using System.Text;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>The form under an entry that corrects it, or confirms a correction.</summary>
public sealed partial class CorrectBox(CorrectionDesk desk, CarSigning signing)
{
    private bool restate;
    private bool? pulled;
    private bool asked;
    private string value = "";
    private string? wrong;
    private DeskAnswer? answer;

    [Parameter, EditorRequired]
    public EntryLine Line { get; set; } = default!;

    [Parameter, EditorRequired]
    public CarId Car { get; set; }

    /// <summary>It was recorded.</summary>
    [Parameter]
    public EventCallback OnDone { get; set; }

    [Parameter]
    public EventCallback OnLeave { get; set; }

    private string Act => FormattableString.Invariant($"{(restate ? "RESTATE" : Line.AboutOpening is null ? "VOID" : "TAKE BACK")} ENTRY {Line.Number}");

    private async Task CorrectAsync(string reason)
    {
        wrong = null;
        var restated = restate ? Read() : null;
        if (wrong is not null)
        {
            return;
        }

        if (restated is not { } right)
        {
            asked = true;
            if (!Line.IsPull || pulled is not null)
            {
                await ShowAsync(await desk.VoidAsync(Car, new CommandId(Guid.NewGuid()), Line.Number, Line.IsPull ? pulled : null, reason));
            }

            return;
        }

        var why = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        var request = new SignRequest(
            "SIGN: corrected by me",
            FormattableString.Invariant($"Restate entry {Line.Number}"),
            [Line.Words, $"It should read {right}", $"Why: {reason}"],
            new CommandId(Guid.NewGuid()));
        await ShowAsync(await signing.SignAsync(Car, new ToSign<SignedCommand>(
            request, shown => new Restate(Line.Number, right, why.Digest, shown) { Covers = Line.Covers }, why)));
    }

    private EnteredTorque? Read()
    {
        var unit = Line.Value!.Value.Unit;
        if (!EnteredTorque.TryParse(value, unit, out var typed, out wrong))
        {
            return null;
        }

        if (typed.Unit != unit)
        {
            wrong = $"“{typed}” is in {typed.Unit.Symbol()}; the record is in {unit.Symbol()}. Write the number in {unit.Symbol()}.";
            return null;
        }

        return typed;
    }

    private async Task ConfirmAsync(string reason)
    {
        var why = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        var request = new SignRequest(
            "CONFIRM: I checked it",
            FormattableString.Invariant($"Confirm the correction in entry {Line.Number}"),
            [Line.Words, .. Line.Texts.Select(text => $"{text.Label}: {text.Text}"), .. new[] { Line.AboutTurn, Line.AboutOpening }.OfType<string>(), $"Why it is right: {reason}"],
            new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Decide,
            NotThese = Line.NotBy,
        };
        await ShowAsync(await signing.SignAsync(Car, new ToSign<SignedCommand>(
            request, shown => new ConfirmCorrection(Line.Number, why.Digest, shown) { Covers = Line.Covers }, why)));
    }

    // Null where nobody signed.
    private async Task ShowAsync(DeskAnswer? got)
    {
        answer = got is { Recorded: false } ? got : null;
        if (got is { Recorded: true })
        {
            await OnDone.InvokeAsync();
        }
    }
}
