using Microsoft.AspNetCore.Components;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Live;

/// <summary>
/// A screen that follows logbooks: after each notice that matters it reads again and is drawn, until it is left. What the server draws
/// before the page has its line does not listen; the page reads once more when it has it.
/// </summary>
public abstract class LiveScreen : ComponentBase, IDisposable
{
    private IDisposable? subscription;
    private int asked;
    private bool reading;
    private bool left;

    [Inject]
    private LogbookNotices Notices { get; set; } = default!;

    [Inject]
    private ILogger<LiveScreen> Log { get; set; } = default!;

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
        left = true;
        subscription?.Dispose();
    }

    // Before the first reading, so that nothing recorded during it is missed.
    protected sealed override void OnInitialized()
    {
        if (RendererInfo.IsInteractive)
        {
            subscription = Notices.Subscribe(notice =>
            {
                if (Matters(notice))
                {
                    LookAgain();
                }
            });
        }
    }

    /// <summary>True when a notice may change what is shown. It is asked on the notices' thread, not on the screen's.</summary>
    protected virtual bool Matters(LogbookNotice notice) => true;

    /// <summary>Reads everything the screen shows.</summary>
    protected abstract Task ReadAsync();

    /// <summary>Asks for a reading, from any thread. However often it is asked while one runs, one more follows.</summary>
    protected void LookAgain()
    {
        if (Interlocked.Exchange(ref asked, 1) == 0)
        {
            _ = InvokeAsync(CatchUpAsync);
        }
    }

    private async Task CatchUpAsync()
    {
        // The reading that runs looks again by itself.
        if (reading)
        {
            return;
        }

        reading = true;
        try
        {
            while (!left && Interlocked.Exchange(ref asked, 0) == 1)
            {
                await ReadOnceAsync();
            }
        }
        finally
        {
            reading = false;
        }
    }

    private async Task ReadOnceAsync()
    {
        try
        {
            await ReadAsync();
            StateHasChanged();
        }
        catch (Exception e) when (left || StorageFailure.Of(e) is not null)
        {
            // What is drawn stays, and what was typed into it; the notice of trouble with the disk is the layout's.
            Log.LogWarning(e, "A screen could not be read again");
        }
        catch (Exception e)
        {
            await DispatchExceptionAsync(e);
        }
    }
}
