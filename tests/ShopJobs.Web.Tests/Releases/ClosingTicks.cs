using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Tests.Releases;

/// <summary>Somebody ticks the closing check of a release to the road.</summary>
internal static class ClosingTicks
{
    public static async Task TickClosingCheckAsync<T>(this IRenderedComponent<T> page, ClosingItem? but = null)
        where T : IComponent
    {
        foreach (var item in ClosingCheck.All.Where(item => item != but))
        {
            await page.Find($"#closing-Road-{item}").ChangeAsync(new ChangeEventArgs { Value = true });
        }
    }
}
