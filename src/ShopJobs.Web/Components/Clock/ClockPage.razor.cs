using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Clock;

/// <summary>What the clock shows, whether it can be trusted, and the lead's signature where it can't.</summary>
public sealed partial class ClockPage(ClockShelf shelf, ClockSigning signing, WhoIsHere here, ShopClock clock)
{
    private ClockReading? reading;
    private DeskAnswer? answer;
    private string? said;
    private bool lead;
    private bool busy;

    private ShopClock Clock => clock;

    protected override async Task OnInitializedAsync()
    {
        lead = (await here.LookingAsync())?.May(Right.Lead) ?? false;
        await ReadAsync();
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook == LogbookId.Shop;

    protected override async Task ReadAsync()
    {
        reading = await shelf.ReadAsync();
        StateHasChanged();
    }

    private async Task SignAsync()
    {
        if (busy)
        {
            return;
        }

        busy = true;
        (answer, said) = (null, null);
        await ReadAsync();
        var got = await signing.SignAsync(ClockDialogs.ToSet(reading!, clock));
        busy = false;
        if (got is { Recorded: true })
        {
            said = "The time is signed. What waited for it goes on.";
        }
        else
        {
            answer = got;
        }

        await ReadAsync();
    }
}
