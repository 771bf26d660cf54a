namespace ShopJobs.Web.Data.Logbook;

/// <summary>Looks at the guards of the logbook when the program starts, and says so in the log when it may only be read.</summary>
internal sealed class LogbookStartCheck(LogbookWriter writer, ILogger<LogbookStartCheck> log) : IHostedService
{
    public async Task StartAsync(CancellationToken cancellationToken)
    {
        var health = await writer.HealthAsync(cancellationToken);
        foreach (var problem in health.Problems)
        {
            log.LogCritical("The logbook may only be read: {Problem}", problem);
        }
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
