namespace ShopJobs.Web.Data.Logbook;

/// <summary>Puts the logbook into the program.</summary>
public static class LogbookRegistration
{
    /// <summary>Registers <see cref="LogbookWriter"/>, <see cref="LogbookSnapshots"/> and <see cref="LogbookNotices"/> on a SQLite file.</summary>
    public static IServiceCollection AddLogbook(this IServiceCollection services, string file) => services
        .AddSingleton(_ => new LogbookDatabase(file))
        .AddSingleton(_ => new FoldCache())
        .AddSingleton<LogbookNotices>()
        .AddSingleton<LogbookSnapshots>()
        .AddSingleton(services => new LogbookWriter(
            services.GetRequiredService<LogbookDatabase>(),
            services.GetRequiredService<FoldCache>(),
            services.GetRequiredService<LogbookNotices>(),
            services.GetRequiredService<TimeProvider>())
        {
            Trouble = services.GetRequiredService<SavingTrouble>(),
        })
        .AddHostedService<LogbookStartCheck>();
}
