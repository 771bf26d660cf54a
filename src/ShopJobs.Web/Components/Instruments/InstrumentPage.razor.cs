using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Instruments;

/// <summary>One instrument: how it stands, its checks, and what was measured with it.</summary>
public sealed partial class InstrumentPage(
    InstrumentShelf shelf, ToolDesk desk, PeopleShelf people, ToolSigning signing, WhoIsHere here, ShopClock clock)
{
    private InstrumentLine? line;
    private IReadOnlyList<MeasuredCar> measured = [];
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private IReadOnlyList<HoldPoint> against = [];
    private CheckForm form = new();
    private DateOnly today;
    private PersonId me;
    private bool lead;
    private bool busy;
    private Asked? asking;
    private DeskAnswer? answer;
    private string? said;

    private enum Asked
    {
        Doubt,
        Clear,
        Retire,
        BringBack,
        Withdraw,
        Describe,
    }

    private static readonly InstrumentFormValidator DescriptionCheck = new();
    private InstrumentForm description = new();
    private CalibrationBook? withdrawn;

    private (string Label, string Act, bool Held) Asks => asking switch
    {
        Asked.Doubt => ("Why what it measured is in doubt", "SUSPECT", true),
        Asked.Retire => ("Why it is out of use for good", "OUT OF USE FOR GOOD", true),
        Asked.BringBack => ("Why it comes back", "BRING IT BACK", false),
        Asked.Withdraw => ("Why the check is withdrawn", "WITHDRAW THE CHECK", true),
        _ => ("How it was found good", "CLEAR", false),
    };

    [Parameter]
    public Guid Id { get; set; }

    private ToolId Tool => new(Id);

    private ShopClock Clock => clock;

    protected override async Task OnParametersSetAsync()
    {
        var present = await here.LookingAsync();
        (lead, me) = (present?.May(Right.Lead) ?? false, present?.Person ?? default);
        names = await people.NamesAsync();
        Read();
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook.Kind == LogbookKind.Car || notice.Logbook == Folders.LogbookOf(Tool);

    protected override Task ReadAsync()
    {
        Read();
        return Task.CompletedTask;
    }

    private void Read()
    {
        today = clock.Today;
        line = shelf.Find(Tool);
        measured = line is null ? [] : shelf.MeasuredWith(Tool);
        against = lead && line is { State: { OutOfUseBy: > 0 } or { Doubts.IsEmpty: false } } ? desk.AgainstClearing(Tool, me) : [];
    }

    private async Task<bool> ToldAsync(CarId car, string words)
    {
        await RunAsync(async () => await shelf.ReportAsync(Tool, words, digest => new TellOwner(car, digest)), "It is recorded that the owner was told.");
        return answer is { Recorded: true };
    }

    private Task DroppedAsync() => RunAsync(
        async () => await shelf.ReportAsync(Tool, "Dropped", reason => new Quarantine(reason)), $"{line!.Instrument.Name} is out of use. Lay it aside.");

    private async Task AnswerAsync(string reason)
    {
        var name = line!.Instrument.Name;
        await (asking switch
        {
            Asked.Doubt => RunAsync(async () => await shelf.ReportAsync(Tool, reason, digest => new RaiseDoubt(digest)), "What it measured is in doubt. Measure again with another one, or clear it."),
            Asked.Retire => RunAsync(async () => await shelf.ReportAsync(Tool, reason, digest => new RetireTool(digest)), $"{name} is out of use for good. What it measured stays listed here."),
            Asked.BringBack => RunAsync(async () => await shelf.ReportAsync(Tool, reason, digest => new BringToolBack(digest)), $"{name} is back, out of use until it is checked or cleared."),
            Asked.Withdraw => RunAsync(() => signing.SignAsync(Tool, ToolDialogs.ToWithdraw(line!.State, withdrawn!, reason)), $"The check is withdrawn. {name} is out of use until the next one."),
            _ => RunAsync(() => signing.SignAsync(Tool, ToolDialogs.ToClear(line!.State, reason, clock.OnTheWall)), $"{name} is cleared."),
        });
        asking = answer is { Recorded: true } ? null : asking;
    }

    private void AskWithdraw(CalibrationBook book) => (withdrawn, asking) = (book, Asked.Withdraw);

    private void AskDescription() => (description, asking) = (InstrumentForm.Of(Tool, line!.Instrument), Asked.Describe);

    private async Task DescribeAsync()
    {
        await RunAsync(async () => await shelf.SaveAsync(description), "Saved. What was measured before keeps its entries.");
        asking = answer is { Recorded: true } ? null : asking;
    }

    private async Task CheckAsync()
    {
        await RunAsync(() => signing.SignAsync(Tool, InstrumentDialogs.ToCheck(line!, form.ToCheck())), "The check is entered.");
        form = answer is { Recorded: true } ? new CheckForm() : form;
    }

    private async Task RunAsync(Func<Task<DeskAnswer?>> run, string done)
    {
        if (busy)
        {
            return;
        }

        busy = true;
        (answer, said) = (null, null);
        try
        {
            (answer, said) = (await run(), done);
        }
        finally
        {
            busy = false;
        }

        Read();
    }
}
