using System.Net;
using Microsoft.AspNetCore.Http;

namespace ShopJobs.Web.Running;

/// <summary>Where the program listens, and whether it may.</summary>
public sealed class Listening(IConfiguration configuration)
{
    /// <summary>Name of the setting that lets the shop's network in.</summary>
    public const string NetworkSetting = "Network:Serve";

    /// <summary>Addresses from --urls, the environment and the Kestrel section; Kestrel's own default when there is none.</summary>
    public IReadOnlyList<string> Addresses { get; } = Read(configuration);

    public bool LoopbackOnly => Addresses.All(IsLoopback);

    /// <summary>
    /// Why the program must not start here, or null. Outside this machine it serves only when told to, only with HTTPS,
    /// and never with demo accounts, whose PINs anybody can read.
    /// </summary>
    /// <param name="demo">True while a demo account can sign in.</param>
    public string? Refusal(bool demo)
    {
        if (Addresses.FirstOrDefault(address => !IsLoopback(address)) is not { } open)
        {
            return null;
        }

        if (demo)
        {
            return $"{open} can be reached from the network, and this shop has demo accounts whose PINs are printed for everybody. "
                + "Serve the demo on http://127.0.0.1:5000 only, or start an empty shop in another data folder.";
        }

        if (!configuration.GetValue<bool>(NetworkSetting))
        {
            return $"{open} can be reached from the network. Set {NetworkSetting}=true if the shop's tablets should reach it, "
                + "else use http://127.0.0.1:5000.";
        }

        return Addresses.FirstOrDefault(address => !IsLoopback(address) && !IsHttps(address)) is { } plain
            ? $"{plain} would carry PINs readable over the network. Give an https:// address and a certificate."
            : null;
    }

    private static List<string> Read(IConfiguration configuration)
    {
        List<string> found = [.. Parts(configuration["urls"])];
        found.AddRange(Parts(configuration["http_ports"]).Select(port => $"http://*:{port}"));
        found.AddRange(Parts(configuration["https_ports"]).Select(port => $"https://*:{port}"));
        found.AddRange(configuration.GetSection("Kestrel:Endpoints").GetChildren().Select(end => end["Url"]).OfType<string>());
        return found.Count > 0 ? found : ["http://localhost:5000"];
    }

    private static string[] Parts(string? list) =>
        list?.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];

    private static bool IsHttps(string address) => BindingAddress.Parse(address).Scheme == "https";

    private static bool IsLoopback(string address)
    {
        var parsed = BindingAddress.Parse(address);
        return parsed.IsUnixPipe
            || parsed.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(parsed.Host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
    }
}
