using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>Screenshots kept as test output, and the accessibility check that goes with each.</summary>
public static class Pictures
{
    /// <summary>Where they are kept: <c>test-output</c> beside this project.</summary>
    public static readonly string Folder = Directory.CreateDirectory(
        Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "test-output")).FullName;

    private static readonly (string Name, int Width, int Height, ColorScheme Look)[] Sizes =
    [
        ("tablet", 1024, 768, ColorScheme.Light), ("tablet-dark", 1024, 768, ColorScheme.Dark),
        ("desktop", 1440, 900, ColorScheme.Light), ("desktop-dark", 1440, 900, ColorScheme.Dark),
        ("phone", 390, 844, ColorScheme.Light), ("phone-dark", 390, 844, ColorScheme.Dark),
    ];

    /// <summary>Keeps a picture of the whole page.</summary>
    public static Task KeepAsync(this IPage page, string name) =>
        page.ScreenshotAsync(new() { Path = Path.Combine(Folder, $"{name}.png"), FullPage = true });

    /// <summary>Fails on any serious or critical finding of axe, naming rule and place; keeps a picture.</summary>
    public static async Task IsAccessibleAsync(this IPage page, string name)
    {
        await page.KeepAsync(name);
        var found = await page.RunAxe();
        var grave = found.Violations.Where(violation => violation.Impact is "serious" or "critical").Select(Words).ToList();
        Assert.True(grave.Count == 0, $"{name} ({page.Url}):\n{string.Join('\n', grave)}");
    }

    /// <summary>The same at every size and look that people have in hand; the tablet's again after it.</summary>
    public static async Task IsAccessibleEverywhereAsync(this IPage page, string name)
    {
        foreach (var (size, width, height, look) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            await page.IsAccessibleAsync($"{name}-{size}");
        }

        await page.SetViewportSizeAsync(1024, 768);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
    }

    private static string Words(AxeResultItem violation) =>
        $"{violation.Impact} {violation.Id}: {violation.Help}: {string.Join("; ", violation.Nodes.Select(node => node.Html))}";
}
