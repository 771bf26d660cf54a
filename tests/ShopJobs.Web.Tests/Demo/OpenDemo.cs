using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Demo;

/// <summary>The demo shop, opened once for tests that only look at it.</summary>
public sealed class OpenDemo : IAsyncLifetime, IDisposable
{
    public OpenShop Shop { get; } = new();

    public Task InitializeAsync() => Shop.OpenDemoAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => Shop.Dispose();
}
