using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>
/// The lead hands in a file of parts, looks at what it would do, and takes it in. Works without a circuit; which columns were picked is
/// in the address, and the file is kept on the server, so that a reload loses nothing.
/// </summary>
public sealed partial class PartImportPage(PartImportDesk desk, WhoIsHere who, ShopSettings settings, NavigationManager navigation)
{
    /// <summary>Where it is.</summary>
    internal const string Address = "/parts/import";

    /// <summary>Most bytes of what is sent: a file and what a form puts around it.</summary>
    internal const long MostSent = PartsFile.MostBytes + 100_000;

    internal const string DraftField = "draft";
    internal const string CurrencyField = "currency";
    private const string FileField = "parts";
    private const string SeenField = "seen";

    private KeptFile? kept;
    private PartColumns columns = PartColumns.Guess([]);
    private ImportPlan? plan;
    private ImportPlan? done;
    private string currency = "";
    private string? currencyWrong;
    private string? fileWrong;
    private string? refusal;

    [CascadingParameter]
    private HttpContext Http { get; set; } = default!;

    [SupplyParameterFromQuery(Name = "tooLarge")]
    private bool TooLarge { get; set; }

    private string? FileWrong => fileWrong
        ?? (TooLarge && kept is null ? "The upload was larger than 5 MB, or did not say its size, and was not read. Split the file, and upload one part after the other." : null);

    private Guid? Draft => Guid.TryParse(Http.Request.Query[DraftField], out var id) ? id : null;

    // A file was looked at here before, and nobody has just taken it in or sent another one.
    private bool Gone => Draft is not null && kept is null && done is null && refusal is null && FileWrong is null;

    protected override async Task OnInitializedAsync()
    {
        currency = (Asked(CurrencyField) ?? settings.Current.Currency).Trim().ToUpperInvariant();
        currencyWrong = PriceText.IsCurrency(currency) ? null : PriceText.NoCurrency;
        kept = Draft is { } id ? await desk.FindAsync(id, Http.RequestAborted) : null;
        if (kept is null)
        {
            return;
        }

        columns = PartColumns.Picked(Asked, kept.File.Headings.Count) ?? PartColumns.Guess(kept.File.Headings);
        if (currencyWrong is null && columns.Missing is null)
        {
            plan = await desk.LookAsync(kept.File, columns, currency, Http.RequestAborted);
        }
    }

    private async Task SendAsync()
    {
        if (await who.ActingAsync(Http.RequestAborted) is not { } present || !present.May(Right.Lead))
        {
            fileWrong = PartCatalogueDesk.NotYours;
        }
        else if (Http.Request.Form[SeenField] is [{ } seen])
        {
            await TakeInAsync(seen);
        }
        else if (Http.Request.Form.Files.GetFile(FileField) is { } file)
        {
            await KeepAsync(file);
        }
        else
        {
            fileWrong = "No file was chosen. Choose a CSV file.";
        }
    }

    private async Task TakeInAsync(string seen)
    {
        var outcome = await desk.TakeInAsync(Draft ?? default, columns, currency, seen, Http.RequestAborted);
        (refusal, plan) = (outcome.Refusal, outcome.Plan);
        done = outcome.Refusal is null ? outcome.Plan : null;
    }

    private async Task KeepAsync(IFormFile file)
    {
        var bytes = new byte[PartsFile.MostBytes + 1];
        await using var content = file.OpenReadStream();
        var length = await content.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, Http.RequestAborted);
        (var id, fileWrong) = await desk.KeepAsync(Path.GetFileName(file.FileName), bytes[..length], Http.RequestAborted);
        if (fileWrong is null)
        {
            navigation.NavigateTo($"{Address}?{DraftField}={id}");
        }
    }

    private string? Asked(string field) => Http.Request.Query.TryGetValue(field, out var text) ? text.ToString() : null;
}
