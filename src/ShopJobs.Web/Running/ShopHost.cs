using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.EntityFrameworkCore;
using MudBlazor.Services;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components;
using ShopJobs.Web.Components.CustomerData;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Components.FirstStart;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Components.Photos;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Running;

/// <summary>Puts the program together and runs it.</summary>
internal static class ShopHost
{
    /// <summary>Serves the shop until stopped; 1 when it refuses to start.</summary>
    internal static async Task<int> RunAsync(string[] args)
    {
        await using var app = Build(args);
        await app.Services.MigrateShopAsync();
        await app.Services.GetRequiredService<ShopSettings>().LoadAsync();
        if (app.Services.GetRequiredService<Listening>().Refusal(await HasDemoAccountAsync(app.Services)) is { } refusal)
        {
            await Console.Error.WriteLineAsync("ShopJobs does not start: " + refusal);
            return 1;
        }

        var toOpen = await NeedsOpeningAsync(app.Services);
        app.Lifetime.ApplicationStarted.Register(
            () => Welcome.Print(Console.Out, app.Urls, app.Services.GetRequiredService<ShopSettings>().Current, toOpen));
        try
        {
            await app.RunAsync();
            return 0;
        }
        catch (IOException broken) when (broken.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync(
                $"ShopJobs does not start: {broken.Message} Stop the other program, or choose another address with --urls http://127.0.0.1:5001");
            return 1;
        }
    }

    private static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(args);
        builder.WebHost.UseStaticWebAssets();
        AddServices(builder);
        var app = builder.Build();
        UsePipeline(app);
        return app;
    }

    private static void AddServices(WebApplicationBuilder builder)
    {
        var services = builder.Services;
        var folder = new DataFolder(builder.Environment.ContentRootPath, builder.Configuration[DataFolder.Setting]);
        services.AddShopLog(builder.Configuration);
        services.AddShopData(folder);
        services.AddDesks(folder);
        services.AddDataProtection().PersistKeysToFileSystem(folder.Keys).SetApplicationName("ShopJobs");
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton<Listening>().AddSingleton<ShopSettings>().AddSingleton<ShopClock>();
        services.AddAccounts(builder.Configuration).AddLimits();
        services.AddSingleton<DatabaseHealth>().AddHealthChecks().AddCheck<DatabaseHealth>("database");
        services.AddHttpContextAccessor();
        services.AddMudServices();
        services.AddRazorComponents().AddInteractiveServerComponents();
        services.AddFeatures();
    }

    private static void UsePipeline(WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandlingPath = "/error",
            CreateScopeForErrors = true,
            StatusCodeSelector = error => StorageFailure.Of(error) is null ? StatusCodes.Status500InternalServerError : StatusCodes.Status503ServiceUnavailable,
        });
        app.UseSecurityHeaders();
        app.UseShopLog();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseUploadLimit();
        app.UseUploadLimit(PartImportPage.Address, PartImportPage.MostSent);
        app.UseOutOfDateForm();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseRateLimiter();
        app.UseAntiforgery();
        app.MapStaticAssets().AllowAnonymous();
        app.MapHealthChecks("/healthz").AllowAnonymous();
        app.MapAccounts();
        app.MapCustomerPages();
        app.MapCustomerData();
        app.MapPartsCatalogue();
        StartProgress.Map(app);
        app.MapCells();
        app.MapDevices();
        app.MapPhotos();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(
            options => options.ContentSecurityFrameAncestorsPolicy = null); // said already, and stricter, by SecurityHeaders
    }

    private static async Task<bool> NeedsOpeningAsync(IServiceProvider services)
    {
        await using var shop = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        return await shop.NeedsOpeningAsync();
    }

    private static async Task<bool> HasDemoAccountAsync(IServiceProvider services)
    {
        await using var shop = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        return await shop.People.AnyAsync(person => person.Demo && person.Active);
    }
}
