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
    ToolShelf shelf, ToolDesk desk, ToolSigning signing, ToolRecall recaller, WhoIsHere here, PeopleBook people, LogbookNotices notices, ShopClock clock)
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
    private IDisposable? subscription;

    private enum Asked
    {
        Doubt,
        Clear,
    }

    [Parameter]
    public Guid Id { get; set; }

    private ToolId Tool => new(Id);

    public void Dispose() => subscription?.Dispose();

    protected override async Task OnParametersSetAsync()
    {
        subscription ??= notices.Subscribe(notice =>
        {
            if (notice.Logbook.Kind == LogbookKind.Car || notice.Logbook == Folders.LogbookOf(Tool))
            {
                _ = InvokeAsync(() =>
                {
                    Read();
                    StateHasChanged();
                });
            }
        });
        var present = await here.LookingAsync();
        (lead, me) = (present?.May(Right.Lead) ?? false, present?.Person ?? default);
        names = await people.NamesAsync();
        Read();
        loading = false;
    }

    private void Read()
    {
        line = shelf.Find(Tool);
        againstClearing = lead ? desk.AgainstClearing(Tool, me) : [];
        recall = recaller.Of(Tool);
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
        if (asking == Asked.Doubt)
        {
            await RunAsync(async _ => await shelf.DoubtAsync(Tool, asked, reason), "Its work is in doubt. Decide each position on its car, or clear the tool.");
        }
        else
        {
            var clear = ToolSheet.ToClear(line!.State, reason, clock.OnTheWall);
            if (!await RunAsync(_ => signing.SignAsync(Tool, clear), $"{line!.Tool.Name} is cleared."))
            {
                return;
            }
        }

        if (answer is null)
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
