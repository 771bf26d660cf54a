using Microsoft.Playwright;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>The one next thing of a step's screen: in sight, uncovered, large, at its one place, and at rest.</summary>
internal static class NextInSight
{
    private const int Pixel = 1;

    // In the order in which a person would take it: the last of them that can be touched stands lowest.
    private const string Find = """
        async () => {
          const place = document.querySelector('[data-next-thing]');
          if (!place) return 'There is no place for what is next.';
          const seen = one => one.getClientRects().length > 0 && !one.disabled;
          const all = [...place.querySelectorAll('.next-main, .report-main, .keypad-click, .tool-offer')].filter(seen);
          const main = place.querySelector('.keypad-click') && seen(place.querySelector('.keypad-click')) ? place.querySelector('.keypad-click')
            : all.filter(one => !one.matches('.tool-offer')).at(-1) ?? all[0] ?? [...place.querySelectorAll('.keypad-enter')].filter(one => one.getClientRects().length > 0)[0]; // dead while a report is on its way
          if (!main) return `Nothing can be touched at the place of what is next: ${place.textContent.trim().slice(0, 200)}`;
          const words = main.textContent.trim().slice(0, 60), box = () => main.getBoundingClientRect();
          const frame = () => new Promise(go => requestAnimationFrame(() => requestAnimationFrame(go)));
          await frame();
          const first = box();
          await frame();
          const second = box();
          if (Math.abs(first.x - second.x) + Math.abs(first.y - second.y) > 1) return `“${words}” moved between two frames.`;
          if (first.height < 63.5) return `“${words}” is ${first.height} px high.`;
          if (first.top < 0 || first.bottom > innerHeight + 1 || first.left < 0 || first.right > innerWidth + 1) return `“${words}” is out of sight: ${first.top} to ${first.bottom} of ${innerHeight}.`;
          const on = document.elementFromPoint(first.left + first.width / 2, first.top + first.height / 2);
          if (!on || !(main === on || main.contains(on))) return `“${words}” is covered by ${on?.outerHTML.slice(0, 120)}.`;
          if (innerWidth >= 1000 && !main.matches('.tool-offer') && (first.left < innerWidth / 2 || first.bottom < innerHeight * 0.7)) return `“${words}” is not at its place: ${first.left}, ${first.bottom}.`;
          return null;
        }
        """;

    /// <summary>Fails where the next thing is out of sight, covered, small, elsewhere or moving.</summary>
    public static async Task NextIsInSightAsync(this IPage page)
    {
        await page.Locator("[data-next-thing]:not([inert])").WaitForAsync();
        var fault = await page.EvaluateAsync<string?>(Find);
        if (fault is not null)
        {
            await page.KeepAsync("next-not-in-sight");
        }

        Assert.True(fault is null, $"{fault} ({new Uri(page.Url).AbsolutePath})");
    }

    /// <summary>Fails where a step's screen has more than three sizes of type for the work and one for what is beside it. Drawings are left aside.</summary>
    public static async Task HasFewSizesOfTypeAsync(this IPage page)
    {
        var sizes = await page.EvaluateAsync<string[]>("""
            () => {
              const sizes = new Map(), walk = document.createTreeWalker(document.querySelector('.step'), NodeFilter.SHOW_TEXT);
              for (let text; (text = walk.nextNode());) {
                const on = text.parentElement;
                if (!text.data.trim() || on.closest('svg, .step-facts, .visually-hidden') || !on.getClientRects().length) continue;
                const size = Math.round(parseFloat(getComputedStyle(on).fontSize));
                if (!sizes.has(size)) sizes.set(size, `${size} px: “${text.data.trim().slice(0, 30)}” in ${on.tagName}.${on.className}`);
              }
              return [...sizes.entries()].sort((a, b) => a[0] - b[0]).map(one => one[1]);
            }
            """);
        Assert.True(sizes.Length <= 4, $"{new Uri(page.Url).AbsolutePath} has {sizes.Length} sizes of type: {string.Join("; ", sizes)}");
    }

    /// <summary>Fails where an act moves what is touched again and again.</summary>
    public static async Task StandsStillAsync(this IPage page, string what, Func<Task> act)
    {
        var before = await page.Locator(what).BoundingBoxAsync();
        await act();
        if (before is not null && await page.Locator(what).IsVisibleAsync() && await page.Locator(what).BoundingBoxAsync() is { } after)
        {
            Assert.True(
                Math.Abs(before.X - after.X) <= Pixel && Math.Abs(before.Y - after.Y) <= Pixel && Math.Abs(before.Height - after.Height) <= Pixel,
                $"{what} moved under the finger: {before.X}, {before.Y}, {before.Height} high; then {after.X}, {after.Y}, {after.Height} high.");
        }
    }
}
