using Serilog;
using Serilog.Core;
using Serilog.Events;

namespace ShopJobs.Web.Running;

/// <summary>Logs without secrets: the address of a customer's page holds its token, so it never reaches a log.</summary>
internal static class RequestLog
{
    internal static void AddShopLog(this IServiceCollection services, IConfiguration configuration) =>
        services.AddSerilog(
            log => log
                .MinimumLevel.Information()
                .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
                .MinimumLevel.Override("Microsoft.AspNetCore.DataProtection", LogEventLevel.Error) // keys lie beside the database, by design
                .ReadFrom.Configuration(configuration)
                .Enrich.FromLogContext()
                .Enrich.With<RedactedPath>()
                .WriteTo.Console(formatProvider: System.Globalization.CultureInfo.InvariantCulture),
            preserveStaticLogger: true);

    internal static void UseShopLog(this WebApplication app) => app.UseSerilogRequestLogging(options =>
    {
        options.Logger = app.Services.GetRequiredService<Serilog.ILogger>();
        options.GetLevel = (http, _, broken) => broken is not null || http.Response.StatusCode >= StatusCodes.Status500InternalServerError
            ? LogEventLevel.Error
            : Path.HasExtension(http.Request.Path) ? LogEventLevel.Debug : LogEventLevel.Information; // style sheets and fonts would drown the rest
        options.GetMessageTemplateProperties = (http, path, elapsed, status) =>
        [
            new LogEventProperty("RequestMethod", new ScalarValue(http.Request.Method)),
            new LogEventProperty("RequestPath", new ScalarValue(Redact(path))),
            new LogEventProperty("StatusCode", new ScalarValue(status)),
            new LogEventProperty("Elapsed", new ScalarValue(elapsed)),
        ];
    });

    /// <summary>The path with a customer's token taken out.</summary>
    internal static string Redact(string path) =>
        path.StartsWith("/s/", StringComparison.OrdinalIgnoreCase) ? "/s/(token)" : path;

    private sealed class RedactedPath : ILogEventEnricher
    {
        public void Enrich(LogEvent logEvent, ILogEventPropertyFactory propertyFactory)
        {
            foreach (var name in (string[])["RequestPath", "Path"])
            {
                if (logEvent.Properties.GetValueOrDefault(name) is ScalarValue { Value: string path } && Redact(path) is var safe && safe != path)
                {
                    logEvent.AddOrUpdateProperty(propertyFactory.CreateProperty(name, safe));
                }
            }
        }
    }
}
