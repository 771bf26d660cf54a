using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>Puts the desks and the logbook behind them into the program.</summary>
public static class DeskRegistration
{
    /// <summary>Registers the logbook on the shop's file, and the desks.</summary>
    public static IServiceCollection AddDesks(this IServiceCollection services, DataFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return services.AddLogbook(folder.Database)
            .AddSingleton<Documents>()
            .AddSingleton<ClockWatch>()
            .AddSingleton<Surroundings>()
            .AddSingleton<ClockDesk>().AddSingleton<ErasureDesk>()
            .AddSingleton<CarDesk>()
            .AddSingleton<CarEntries>()
            .AddSingleton<ToolDesk>();
    }
}
