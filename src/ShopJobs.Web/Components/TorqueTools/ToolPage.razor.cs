using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>One tool: what it is, how it stands, what it tightened.</summary>
public sealed partial class ToolPage(
    ToolShelf shelf, ToolDesk desk, ToolSigning signing, ToolRecall recaller, WhoIsHere here, PeopleShelf people, ShopClock clock)
{
    private const string DoubtHint = "From this entry on every position below shows doubted, on every screen, and holds its step and release until you decide it or clear the tool.";
    private const string ClearHint = "Lifts its doubts and puts it back in use. A tool past its calibration stays past it.";
    private ToolLine? line;
    private IReadOnlyList<CarRecall> recall = [];
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private bool loading = true;
    private IReadOnlyList<HoldPoint> againstClearing = [];
    private PersonId me;
    private bool lead;
    private bool busy;
    private Asked? asking;
    private CommandId asked;
    private DeskAnswer? answer;
    private string? said;
    private CalibrationBook? withdrawn;

    private enum Asked
    {
        Doubt,
        Clear,
        Retire,
        BringBack,
        Withdraw,
    }

    [Parameter]
    public Guid Id { get; set; }

    private ToolId Tool => new(Id);

    private (string Label, string Hint, string Act, bool Held) Asks => asking switch
    {
        Asked.Doubt => ("Why its work is in doubt", DoubtHint, "SUSPECT", true),
        Asked.Retire => ("Why it is out of use for good", "It is offered for nothing any more. Its logbook, its recall and the records made with it stay; it can be brought back.", "OUT OF USE FOR GOOD", true),
        Asked.BringBack => ("Why it comes back", "It stays out of use until it is calibrated or cleared.", "BRING IT BACK", false),
        Asked.Withdraw => ("Why the calibration is withdrawn", "For one entered by mistake: of another tool, or with a wrong date. It stays in the logbook, marked; the tool is out of use until the next one.", "WITHDRAW THE CALIBRATION", true),
        _ => ("How it was found good", ClearHint, "CLEAR", false),
    };

    protected override async Task OnParametersSetAsync()
    {
        var present = await here.LookingAsync();
        (lead, me) = (present?.May(Right.Lead) ?? false, present?.Person ?? default);
        names = await people.NamesAsync();
        Read();
        loading = false;
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook.Kind == LogbookKind.Car || notice.Logbook == Folders.LogbookOf(Tool);

    protected override Task ReadAsync()
    {
        Read();
        return Task.CompletedTask;
    }

    private void Read()
    {
        line = shelf.Find(Tool);
        againstClearing = lead ? desk.AgainstClearing(Tool, me) : [];
        recall = recaller.Of(Tool);
    }

    private void AskWithdraw(CalibrationBook book)
    {
        withdrawn = book;
        Ask(Asked.Withdraw);
    }

    private void Ask(Asked what)
    {
        asking = what;
        asked = new CommandId(Guid.NewGuid());
        (answer, said) = (null, null);
    }

    private Task<bool> DroppedAsync() => RunAsync(
        async id => await shelf.TakeOutAsync(Tool, id, "Dropped"), $"{line!.Tool.Name} is out of use. Lay it aside and take another tool.");

    private Task<bool> OutOfUseAsync() => RunAsync(
        async id => await shelf.TakeOutAsync(Tool, id, "Taken out of use"), $"{line!.Tool.Name} is out of use. Lay it aside and take another tool.");

    private async Task<bool> TellAsync(CarId car, string words)
    {
        await RunAsync(async id => await shelf.TellAsync(Tool, id, car, words), "It is recorded that the owner was told.");
        StateHasChanged();
        return answer is null;
    }

    private async Task AnswerReasonAsync(string reason)
    {
        var name = line!.Tool.Name;
        var sent = asking switch
        {
            Asked.Doubt => await RunAsync(async _ => await shelf.DoubtAsync(Tool, asked, reason), "Its work is in doubt. Decide each position on its car, or clear the tool."),
            Asked.Retire => await RunAsync(async _ => await shelf.RetireAsync(Tool, asked, reason), $"{name} is out of use for good. What it tightened stays traced here."),
            Asked.BringBack => await RunAsync(async _ => await shelf.BringBackAsync(Tool, asked, reason), $"{name} is back, out of use until it is calibrated or cleared."),
            Asked.Withdraw => await RunAsync(_ => signing.SignAsync(Tool, ToolDialogs.ToWithdraw(line!.State, withdrawn!, reason)), $"The calibration is withdrawn. {name} is out of use until the next one."),
            _ => await RunAsync(_ => signing.SignAsync(Tool, ToolDialogs.ToClear(line!.State, reason, clock.OnTheWall)), $"{name} is cleared."),
        };
        if (sent && answer is null)
        {
            asking = null;
        }
    }

    // False when nothing was sent: nobody signed.
    private async Task<bool> RunAsync(Func<CommandId, Task<DeskAnswer?>> run, string done)
    {
        if (busy)
        {
            return false;
        }

        busy = true;
        (answer, said) = (null, null);
        var got = await run(new CommandId(Guid.NewGuid()));
        busy = false;
        var recorded = got is { Recorded: true };
        (answer, said) = (recorded ? null : got, recorded ? done : null);
        Read();
        return got is not null;
    }
}
