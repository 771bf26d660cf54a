using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>One tool: what it is, how it stands, what it tightened.</summary>
public sealed partial class ToolPage(ToolShelf shelf, ToolRecall recaller, WhoIsHere here, LogbookNotices notices)
{
    private const string DoubtHint = "From this entry on every position below shows doubted, on every screen, and holds its step and release until you decide it or clear the tool.";
    private const string ClearHint = "Lifts its doubts and puts it back in use. A tool past its calibration stays past it.";
    private ToolLine? line;
    private IReadOnlyList<CarRecall> recall = [];
    private bool loading = true;
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
        lead = (await here.LookingAsync())?.May(Right.Lead) ?? false;
        Read();
        loading = false;
    }

    private void Read()
    {
        line = shelf.Find(Tool);
        recall = recaller.Of(Tool);
    }

    private void Ask(Asked what)
    {
        asking = what;
        asked = new CommandId(Guid.NewGuid());
        (answer, said) = (null, null);
    }

    private Task DroppedAsync() => RunAsync(
        id => shelf.TakeOutAsync(Tool, id, "Dropped"), $"{line!.Tool.Name} is out of use. Lay it aside and take another tool.");

    private Task OutOfUseAsync() => RunAsync(
        id => shelf.TakeOutAsync(Tool, id, "Taken out of use"), $"{line!.Tool.Name} is out of use. Lay it aside and take another tool.");

    private async Task AnswerReasonAsync(string reason)
    {
        var doubt = asking == Asked.Doubt;
        await RunAsync(
            _ => doubt ? shelf.DoubtAsync(Tool, asked, reason) : shelf.ClearAsync(Tool, asked, reason),
            doubt ? "Its work is in doubt. Decide each position on its car, or clear the tool." : $"{line!.Tool.Name} is cleared.");
        if (answer is null)
        {
            asking = null;
        }
    }

    private async Task RunAsync(Func<CommandId, Task<DeskAnswer>> run, string done)
    {
        if (busy)
        {
            return;
        }

        busy = true;
        (answer, said) = (null, null);
        var got = await run(new CommandId(Guid.NewGuid()));
        busy = false;
        (answer, said) = got.Recorded ? ((DeskAnswer?)null, done) : (got, null);
        Read();
    }
}
