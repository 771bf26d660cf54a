using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.CarResults;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>The technician's screen: one step of one car.</summary>
public sealed partial class StepPage(
    StepDesk desk, CarSigning signing, IDialogService dialogs, IJSRuntime script, Shop.ShopClock clock, NavigationManager navigation, TimeProvider time)
{
    private readonly Dictionary<string, ReasonGiven> typed = [];
    private StepAnswersDraft draft = new();
    private StepScene? scene;
    private IReadOnlyList<ToolOffer> offers = [];
    private IReadOnlyList<PeopleShelf.Named> others = [];
    private IReadOnlyList<PeopleShelf.Named> deciders = [];
    private DeskAnswer? answer;
    private LastEntry? last;
    private ToolId? chosen;
    private (ToolId Tool, Cell Cell)? used;
    private RunDownTyped? runDown;
    private string? shownFor;
    private string? drawn;
    private bool loaded;
    private bool busy;

    [Parameter]
    public Guid Car { get; set; }

    [Parameter]
    public Guid Job { get; set; }

    [Parameter]
    public string Step { get; set; } = "";

    /// <summary>The tool in hand, kept in the address so that a reload keeps it.</summary>
    [SupplyParameterFromQuery(Name = "tool")]
    public string? ToolInHand { get; set; }

    /// <summary>A run-down torque that was read and is recorded with the next pull.</summary>
    [SupplyParameterFromQuery(Name = "run-down")]
    public string? RunDownRead { get; set; }

    private ToolOffer? Tool => scene is { Next: NextAction.PullNow { Cell: var cell } }
        ? (used is var (tool, at) && IsSame(at, cell) ? offers.FirstOrDefault(offer => offer.Id == tool) : null)
            ?? ToolOffer.Pick(offers, chosen, scene.State, scene.Job.Id, cell, scene.Here.Person)
        : null;

    // The next pull with the tool in hand; null while there is none.
    private KeypadCell? Pad => scene is { Next: NextAction.PullNow { Cell: var cell } } && Tool is { } tool
        ? new KeypadCell(scene, cell, tool, Typed)
        : null;

    private RunDownTyped? Typed => scene is { Next: NextAction.PullNow { Cell: var cell } } && runDown?.IsFor(cell) == true ? runDown : null;

    // Once its joints are done, what is to be ticked and measured stands first; with nothing of both the picture stays where it is.
    private bool IsReadFirst => scene is { Next: NextAction.Done or NextAction.Look, Step: { Work.Count: > 0, Step: { Ticks.Count: > 0 } or { Measures.Count: > 0 } } };

    protected override async Task OnParametersSetAsync()
    {
        if (shownFor == $"{Car}/{Job}/{Step}")
        {
            return;
        }

        shownFor = $"{Car}/{Job}/{Step}";
        draft = new StepAnswersDraft();
        typed.Clear();
        chosen = Guid.TryParse(ToolInHand, out var tool) ? new ToolId(tool) : null;
        runDown = RunDownTyped.Read(RunDownRead);
        try
        {
            await ReadNowAsync();
        }
        finally
        {
            leaving = Leaving.No;
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && scene is not null)
        {
            draft.Restore(await script.InvokeAsync<string>("shopStep.drafts"));
            StateHasChanged();
        }

        await SayWhatWasSignedAsync();
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook.Kind == LogbookKind.Tool || notice.Logbook.Owner == Car;

    // What is being signed or finished is read when that is done.
    protected override Task ReadAsync() => leaving == Leaving.Signing ? Task.CompletedTask : ReadNowAsync();

    private async Task ReadNowAsync()
    {
        var asked = shownFor;
        // Locked, or signed in again on another page: what is drawn stays until somebody is here again.
        var read = await desk.SceneAsync(new CarId(Car), new JobId(Job), Step) ?? (drawn == shownFor ? scene : null);
        if (asked != shownFor)
        {
            return;
        }

        scene = read;
        drawn = shownFor;
        offers = scene is { Next: NextAction.PullNow { Cell: var cell } }
            ? ToolOffer.For(scene.Reading, scene.Job, cell, runDown?.IsFor(cell) == true ? runDown.Value : null)
            : [];
        last = scene is null ? null : LastEntry.Of(scene);
        if (scene is not null)
        {
            draft.For(scene.Redone);
            draft.Start(scene.Finished is { } finished && finished.Person == scene.Here.Person ? finished.Fact : null);
        }

        others = scene is null ? [] : await desk.OthersAsync(scene.Here.Person);
        deciders = scene is { Held.Count: > 0 } or { HeldHere.Count: > 0 } ? await desk.DecidersAsync() : [];
        loaded = true;
    }

    // A tool that can't do it is named for the one pull that was made with it.
    private void UseTool(ToolId? tool) => used = tool is { } id && scene is { Next: NextAction.PullNow { Cell: var cell } } ? (id, cell) : null;

    private static bool IsSame(Cell one, Cell other) =>
        (one.Position, one.Cycle, one.Stage.Number, one.Visit) == (other.Position, other.Cycle, other.Stage.Number, other.Visit);

    private async Task ChooseTool(ToolId tool)
    {
        (chosen, used) = (tool, null);
        await script.InvokeVoidAsync("shopStep.note", "tool", tool.Value.ToString());
    }

    private async Task TakeRunDown(RunDownTyped read)
    {
        runDown = read;
        await script.InvokeVoidAsync("shopStep.note", "run-down", read.Text);
        await ReadAsync();
    }

    private Task NotApplicableAsync() => OnceAsync(async () =>
    {
        var shown = scene!;
        if (await AskAsync(StepDialogs.NotApplicable(shown)) is { } given)
        {
            Keep(await signing.SignAsync(shown.Car.Id, StepDialogs.ToSkip(shown, given.Text)), given);
        }
    });

    private Task UndoAsync() => OnceAsync(async () =>
    {
        var shown = scene!;
        if (last is { } entry && await AskAsync(StepDialogs.Undo(entry)) is { } given)
        {
            Keep(
                given.Value is { } value
                    ? await signing.SignAsync(shown.Car.Id, StepDialogs.ToRestate(shown, entry, value, given.Text))
                    : await desk.RunAsync(
                        shown.Car.Id, new CommandId(Guid.NewGuid()), given.Text, reason => new VoidEntry(entry.Number, given.WasPulled, reason)),
                given);
            await TellAsync(answer, $"Corrected: {entry.Words}{(given.Value is { } right ? $" is {right}" : " is void")}. Until a second person confirms it below, it makes nothing count that did not.");
        }
    });

    private Task TreatAsync(TreatThread treat) => OnceAsync(async () => answer = await desk.RunAsync(scene!.Car.Id, treat));

    // What was said of the record under the keypad gives way to what became of it.
    private async Task TellAsync(DeskAnswer? got, string words)
    {
        if (got is { Recorded: true })
        {
            await script.InvokeVoidAsync("shopStep.told", "saved", new[] { words });
        }
    }

    private async Task TakeAsync(DeskAnswer got)
    {
        answer = got;
        await TellAsync(got, "The correction is confirmed. What holds now, if anything, is above.");
        await ReadAsync();
    }

    private Task HoldAsync(JointPosition? touched) => OnceAsync(async () =>
    {
        var offers = StepDialogs.ToHold(scene!, touched);
        if (await AskAsync(StepDialogs.Hold(offers)) is { } given)
        {
            var offer = offers[Math.Min(given.About, offers.Count - 1)];
            Keep(
                await desk.RunAsync(scene!.Car.Id, new CommandId(Guid.NewGuid()), given.Text, reason => offer.Command(new HoldGiven(reason, given.Lot))),
                given);
        }
    });

    private Task RecordAsync(ResultAsked asked) => OnceAsync(async () =>
        answer = await signing.SignAsync(scene!.Car.Id, ResultDialogs.ToRecord(scene.Reading, scene.Car, asked, (scene.Job.Id, scene.Step))));

    // A reason that was typed is offered again until its command is recorded.
    private async Task<ReasonGiven?> AskAsync(ReasonAsked asked)
    {
        var given = await (asked with { Start = typed.GetValueOrDefault(asked.Title) }).AskAsync(dialogs);
        if (given is not null)
        {
            typed[asked.Title] = given;
        }

        return given;
    }

    private void Keep(DeskAnswer? got, ReasonGiven? given)
    {
        answer = got;
        if (got is { Recorded: true } && given is not null)
        {
            typed.Clear();
        }
    }

    private async Task OnceAsync(Func<Task> act)
    {
        if (busy || scene is null)
        {
            return;
        }

        busy = true;
        answer = null;
        try
        {
            await act();
        }
        finally
        {
            busy = false;
        }

        await ReadAsync();
        if (answer is { Counts: false })
        {
            // The button pressed may be far below what is said.
            await script.InvokeVoidAsync("shopStep.look");
        }
    }

    private ClampStanding Clamp(JointGroup group, Stage stage) => ClampStanding.Of(
        group.Specification(stage) with { ToolDeviationPercent = Tool?.Tool.ToleranceFor(stage.Value) }, stage.Value);

    private IReadOnlyList<string> Beside(JointGroup group) => ProcedureCautions.BesideTheBand(scene!.Placed.Procedure, group);

    private string Time(DateTime at) => clock.Words(at);
}
