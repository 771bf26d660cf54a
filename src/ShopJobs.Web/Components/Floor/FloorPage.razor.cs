using Microsoft.AspNetCore.Components;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Floor;

/// <summary>The shop as it lies, kept up to date by notices; ages, cures and places by a look every quarter minute.</summary>
public sealed partial class FloorPage
{
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(15);
    private FloorReading? reading;
    private string? failed;
    private IDisposable? subscription;
    private ITimer? timer;
    private int asked;

    public void Dispose()
    {
        subscription?.Dispose();
        timer?.Dispose();
    }

    protected override async Task OnInitializedAsync()
    {
        await ReadAsync();
        if (RendererInfo.IsInteractive)
        {
            subscription = Notices.Subscribe(_ => Ask());
            timer = Time.CreateTimer(_ => Ask(), null, Look, Look);
        }
    }

    // Many notices while one reading runs ask for one reading more.
    private void Ask()
    {
        if (Interlocked.Exchange(ref asked, 1) == 0)
        {
            _ = InvokeAsync(async () =>
            {
                Interlocked.Exchange(ref asked, 0);
                await ReadAsync();
                StateHasChanged();
            });
        }
    }

    private async Task ReadAsync()
    {
        try
        {
            reading = await Board.ReadAsync();
            failed = null;
        }
        catch (Exception e) when (e is Microsoft.Data.Sqlite.SqliteException or IOException)
        {
            failed = reading is null ? e.Message : $"What is shown was read before. {e.Message}";
        }
    }
}
