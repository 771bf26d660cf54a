using System.CommandLine;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Admin;

/// <summary>The shop's data for a verb, without the web.</summary>
internal static class VerbServices
{
    /// <summary>Every verb that reads the shop offers this option.</summary>
    internal static Option<string?> DataOption() => new("--data")
    {
        Description = "Folder that holds the shop; the one of the settings when not given.",
    };

    /// <summary>Where the database is, for a verb that must not touch it.</summary>
    internal static string DatabaseFile(string? folder)
    {
        var root = Directory.GetCurrentDirectory();
        return DataFolder.DatabaseOf(root, folder ?? FolderSetting(root));
    }

    /// <summary>Opens the folder and brings the database up to date.</summary>
    internal static async Task<ServiceProvider> OpenAsync(string? folder, CancellationToken cancellation)
    {
        var root = Directory.GetCurrentDirectory();
        var services = new ServiceCollection()
            .AddSingleton(TimeProvider.System)
            .AddLogging(log => log.SetMinimumLevel(LogLevel.Warning).AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace))
            .AddShopData(new DataFolder(root, folder ?? FolderSetting(root)))
            .BuildServiceProvider();
        await services.MigrateShopAsync(cancellation);
        return services;
    }

    private static string? FolderSetting(string root) => new ConfigurationBuilder().SetBasePath(root)
        .AddJsonFile("appsettings.json", optional: true).AddEnvironmentVariables().Build()[DataFolder.Setting];
}
