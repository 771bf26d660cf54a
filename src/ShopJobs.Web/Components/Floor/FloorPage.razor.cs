namespace ShopJobs.Web.Components.Floor;

/// <summary>The shop as it lies, kept up to date by notices; ages, cures and places by a look every quarter minute.</summary>
public sealed partial class FloorPage
{
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(15);
    private FloorScene? reading;
    private string? failed;
    private ITimer? timer;

    protected override void Dispose(bool disposing)
    {
        timer?.Dispose();
        base.Dispose(disposing);
    }

    protected override async Task OnInitializedAsync()
    {
        if (RendererInfo.IsInteractive)
        {
            timer = Time.CreateTimer(_ => LookAgain(), null, Look, Look);
        }

        await ReadAsync();
    }

    protected override async Task ReadAsync()
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
