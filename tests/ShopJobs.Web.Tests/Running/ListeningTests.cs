using Microsoft.Extensions.Configuration;
using ShopJobs.Web.Running;

namespace ShopJobs.Web.Tests.Running;

public sealed class ListeningTests
{
    [Theory]
    [InlineData("http://127.0.0.1:5000")]
    [InlineData("http://localhost:5000;https://[::1]:5001")]
    [InlineData("")]
    public void This_machine_may_always_be_served(string urls)
    {
        var listening = On(("urls", urls));

        Assert.True(listening.LoopbackOnly);
        Assert.Null(listening.Refusal(demo: true));
    }

    [Theory]
    [InlineData("urls", "https://0.0.0.0:5000")]
    [InlineData("urls", "http://127.0.0.1:5000;https://*:5001")]
    [InlineData("urls", "https://shop.example:5000")]
    [InlineData("https_ports", "8443")]
    [InlineData("Kestrel:Endpoints:Lan:Url", "https://192.168.1.4:5001")]
    public void Demo_accounts_are_never_served_to_a_network(string key, string value)
    {
        var refusal = On((key, value), (Listening.NetworkSetting, "true")).Refusal(demo: true);

        Assert.Contains("demo accounts", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Network_is_served_only_when_told_to()
    {
        Assert.Contains(Listening.NetworkSetting, On(("urls", "https://0.0.0.0:5000")).Refusal(demo: false), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://0.0.0.0:5000")]
    [InlineData("https://0.0.0.0:5001;http://0.0.0.0:5000")]
    public void Network_is_never_served_without_https(string urls)
    {
        Assert.Contains("https://", On(("urls", urls), (Listening.NetworkSetting, "true")).Refusal(demo: false), StringComparison.Ordinal);
    }

    [Fact]
    public void Network_is_served_with_https_when_told_to()
    {
        Assert.Null(On(("urls", "https://0.0.0.0:5001;http://127.0.0.1:5000"), (Listening.NetworkSetting, "true")).Refusal(demo: false));
    }

    private static Listening On(params (string Key, string Value)[] settings) => new(new ConfigurationBuilder()
        .AddInMemoryCollection(settings.Select(setting => KeyValuePair.Create(setting.Key, (string?)setting.Value))).Build());
}
