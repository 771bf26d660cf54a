using System.Text;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>A shop with the demo's register and no part yet; the lead is signed in.</summary>
internal sealed class PartShop : IDisposable
{
    private PartShop(ShopOnDisk shop) => Disk = shop;

    public ShopOnDisk Disk { get; }

    public PartCatalogueDesk Desk => Disk.Get<PartCatalogueDesk>();

    public PartImportDesk Import => Disk.Get<PartImportDesk>();

    public static async Task<PartShop> OpenAsync()
    {
        var shop = new PartShop(await ShopOnDisk.OpenAsync());
        Assert.True((await shop.Disk.Get<ProcedureImport>().ImportAsync(SeedDocuments.All, by: null)).IsTaken);
        await shop.Disk.SignInAsync(DemoPeople.Lead);
        return shop;
    }

    /// <summary>A wheel stud with everything that a part can have.</summary>
    public static PartForm Stud(string number = "Q4-1242") => new()
    {
        Maker = "Quillon",
        Number = number,
        Name = "Wheel stud 42 mm",
        Fills = "wheel.stud",
        Thread = "M12x1.5",
        Strength = "12.9",
        SingleUse = true,
        Price = "8.45",
        Currency = "EUR",
    };

    public Task<IReadOnlyList<PartRow>> AllAsync() => Disk.Get<PartCatalogueShelf>().AllAsync();

    public async Task<PartRow> OneAsync() => Assert.Single(await AllAsync());

    public async Task EnterAsync(params PartForm[] forms)
    {
        foreach (var form in forms)
        {
            Assert.Null(await Desk.SaveAsync(form));
        }
    }

    /// <summary>What a file would do, its columns guessed from its headings.</summary>
    public Task<ImportPlan> LookAsync(string text, string currency = "EUR") => LookAsync(Encoding.UTF8.GetBytes(text), currency);

    public Task<ImportPlan> LookAsync(byte[] bytes, string currency = "EUR")
    {
        var file = PartsFile.Read(bytes, out var refusal);
        Assert.True(file is not null, refusal);
        return Import.LookAsync(file, PartColumns.Guess(file.Headings), currency);
    }

    /// <summary>Hands a file in, looks at it, and takes it in.</summary>
    public async Task<ImportOutcome> TakeInAsync(byte[] bytes)
    {
        var (id, refusal) = await Import.KeepAsync("parts.csv", bytes);
        Assert.Null(refusal);
        var file = (await Import.FindAsync(id))!.File;
        var columns = PartColumns.Guess(file.Headings);
        var plan = await Import.LookAsync(file, columns, "EUR");
        return await Import.TakeInAsync(id, columns, "EUR", plan.Mark);
    }

    public Task<ImportOutcome> TakeInAsync(string text) => TakeInAsync(Encoding.UTF8.GetBytes(text));

    public void Dispose() => Disk.Dispose();
}
