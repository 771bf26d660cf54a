using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>The parts that the shop fits, by maker and number.</summary>
public sealed partial class PartsPage(PartCatalogueShelf shelf, WhoIsHere here, ShopSettings settings)
{
    private IReadOnlyList<KindToFill> kinds = [];
    private PartsFound? found;
    private string words = "";
    private bool mayWrite;
    private bool showRetired;

    private bool Demo => settings.Current.Demo;

    private string Said => found!.Matching switch
    {
        0 => words.Length == 0
            ? "Every part is out of use. Tick the box to see them."
            : "No part has all these words. Take one away, or read the number again.",
        1 => "1 part.",
        var many when many > found.First.Count => string.Create(CultureInfo.InvariantCulture, $"The first {found.First.Count:#,0} of {many:#,0} parts. Search for the one you want."),
        var many => string.Create(CultureInfo.InvariantCulture, $"{many:#,0} parts."),
    };

    protected override async Task OnInitializedAsync()
    {
        mayWrite = (await here.LookingAsync())?.May(Right.Lead) ?? false;
        kinds = shelf.Kinds();
        await ReadAsync();
    }

    private async Task SearchAsync(string typed)
    {
        words = typed;
        await ReadAsync();
    }

    private async Task ReadAsync() => found = await shelf.SearchAsync(words, showRetired);
}
