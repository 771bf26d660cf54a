using Microsoft.AspNetCore.Components;
using MudBlazor;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>The form under an entry that corrects it, or confirms a correction.</summary>
public sealed partial class CorrectBox(CorrectionDesk desk, IDialogService dialogs)
{
    private bool restate;
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

    private string Act => FormattableString.Invariant($"{(restate ? "RESTATE" : "VOID")} ENTRY {Line.Number}");

    private async Task CorrectAsync(string reason)
    {
        wrong = null;
        var restated = restate ? Read() : null;
        if (wrong is not null)
        {
            return;
        }

        await ShowAsync(await desk.CorrectAsync(Car, new CommandId(Guid.NewGuid()), Line.Number, restated, reason));
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
        var request = new SignRequest(
            "CONFIRM: looked at by me",
            FormattableString.Invariant($"Confirm the correction in entry {Line.Number}"),
            [Line.Words, .. Line.Texts.Select(text => $"{text.Label}: {text.Text}"), .. Line.AboutTurn is { } turn ? [turn] : Array.Empty<string>(), $"Why it is right: {reason}"],
            new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Decide,
            NotThese = Line.NotBy,
        };
        if (await dialogs.SignAsync(request) is { } proof)
        {
            await ShowAsync(await desk.ConfirmAsync(Car, proof, request.Digest, Line.Number, reason));
        }
    }

    private async Task ShowAsync(DeskAnswer got)
    {
        answer = got.Recorded ? null : got;
        if (got.Recorded)
        {
            await OnDone.InvokeAsync();
        }
    }
}
