using Microsoft.AspNetCore.Components;

namespace ShopJobs.Web.Tests.Bench;

/// <summary>Navigation whose news of a new address comes only when the test lets it, as over a slow line.</summary>
internal sealed class LateNavigation : NavigationManager
{
    private readonly Queue<string> underWay = new();

    public LateNavigation(string address) => Initialize("http://localhost/", address);

    public void HearNext()
    {
        Uri = underWay.Dequeue();
        NotifyLocationChanged(isInterceptedLink: false);
    }

    protected override void NavigateToCore(string uri, NavigationOptions options) => underWay.Enqueue(ToAbsoluteUri(uri).AbsoluteUri);
}
