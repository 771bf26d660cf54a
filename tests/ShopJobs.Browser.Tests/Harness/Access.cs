using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>What everybody needs of a page, read from the drawn page itself. Each answers with what is wrong, an empty list where nothing is.</summary>
internal static class Access
{
    // What can be reached with the Tab key and is drawn.
    private const string Focusable = """
        const shown = element => element.checkVisibility({ visibilityProperty: true }) && element.getBoundingClientRect().width > 1;
        const named = element => `${element.tagName.toLowerCase()}${element.id ? `#${element.id}` : ''}.${element.className} “${(element.getAttribute('aria-label') ?? element.textContent).trim().replace(/\s+/g, ' ').slice(0, 40)}”`;
        const focusable = [...document.querySelectorAll('a[href], button:not(:disabled), input:not([type=hidden]):not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]')]
          .filter(element => shown(element) && !element.closest('[inert]'));
        """;

    // A ring on the thing itself, on what stands in for it, or on the label around it.
    private const string Rings = "() => {" + Focusable + """
          const ring = element => { const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element); return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2 && outlineColor !== 'rgba(0, 0, 0, 0)'; };
          return focusable.filter(element => {
            element.focus({ preventScroll: true });
            return document.activeElement === element && ![element, element.nextElementSibling, element.parentElement].some(one => one && ring(one));
          }).map(named);
        }
        """;

    // 44 px in both directions: links in the middle of a sentence are words of it (WCAG 2.5.8 leaves them out), checks are as large as their label.
    private const string Small = "() => {" + Focusable + """
          const inSentence = element => element.tagName === 'A' && getComputedStyle(element).display === 'inline' && element.parentElement.textContent.trim() !== element.textContent.trim();
          const box = element => (element.matches('[type=checkbox], [type=radio]') ? element.closest('label') ?? document.querySelector(`label[for="${CSS.escape(element.id)}"]`) ?? element : element).getBoundingClientRect();
          return focusable.filter(element => !element.matches('[tabindex="0"]:not(a, button, input)') && !element.closest('.skip') && !inSentence(element)).filter(element => { const { width, height } = box(element); return width < 43.5 || height < 43.5; })
            .map(element => { const { width, height } = box(element); return `${Math.round(width)} x ${Math.round(height)} ${named(element)}`; });
        }
        """;

    // Wider than the window, or a control that begins or ends outside of it and in no box of its own that scrolls.
    private const string Overflow = "() => {" + Focusable + """
          const wide = document.documentElement.clientWidth;
          const scrolls = element => { for (let box = element.parentElement; box; box = box.parentElement) if (['auto', 'scroll'].includes(getComputedStyle(box).overflowX) && box !== document.body && box !== document.documentElement) return true; return false; };
          const cut = focusable.filter(element => { const { left, right } = element.getBoundingClientRect(); return (left < -1 || right > wide + 1) && !element.matches('.skip') && !scrolls(element); });
          const clipped = focusable.filter(element => element.matches('a, button, summary') && getComputedStyle(element).overflowX === 'hidden' && getComputedStyle(element).textOverflow !== 'ellipsis' && element.scrollWidth > element.clientWidth + 1);
          const widest = document.documentElement.scrollWidth - wide;
          return [...(widest > 1 ? [`${widest} px wider than the window`] : []), ...cut.map(element => `outside: ${named(element)}`), ...clipped.map(element => `cut: ${named(element)}`)];
        }
        """;

    // What is chosen looks otherwise than its neighbours that are not, in what forced colours leave: lines, weight, words.
    private const string Chosen = """
        () => {
          const marks = element => { const style = getComputedStyle(element); const words = getComputedStyle(element, '::before'); return [style.borderTopWidth, style.borderTopStyle, style.borderTopColor, style.backgroundColor, style.outlineStyle, style.textDecorationLine, words.content].join('|'); };
          // A radio that the browser draws keeps its dot.
          const isBrowsers = element => element.type === 'radio' && getComputedStyle(element).appearance !== 'none' && element.offsetWidth > 12 && element.checkVisibility({ opacityProperty: true });
          const pairs = [
            ['[aria-pressed="true"]', '[aria-pressed="false"]', element => element],
            ['a[aria-current]', 'a:not([aria-current])', element => element],
            ['input[type=radio]:checked', 'input[type=radio]:not(:checked)', element => element.matches('.person-tile input') ? element.nextElementSibling : element.closest('label') ?? element],
          ];
          return pairs.flatMap(([chosen, other, drawn]) => [...document.querySelectorAll(chosen)].filter(element => drawn(element).checkVisibility() && !isBrowsers(element)).filter(element => {
            const neighbour = [...(element.closest('ul, ol, fieldset, div, nav')?.parentElement ?? document).querySelectorAll(other)].find(one => drawn(one).className === drawn(element).className && drawn(one).checkVisibility());
            return neighbour && marks(drawn(element)) === marks(drawn(neighbour));
          }).map(element => `${chosen} ${drawn(element).className} “${drawn(element).textContent.trim().slice(0, 30)}”`));
        }
        """;

    /// <summary>Every rule of axe that can be decided, whatever its weight.</summary>
    public static async Task<IReadOnlyList<string>> AxeAsync(this IPage page) => [.. (await page.RunAxe()).Violations
        .Select(found => $"{found.Id}: {found.Help}: {string.Join("; ", found.Nodes.Select(node => node.Html))}")];

    /// <summary>Things that are focused with the keyboard and show no ring.</summary>
    public static async Task<IReadOnlyList<string>> WithoutRingAsync(this IPage page)
    {
        // A key pressed makes the browser take what follows for the keyboard's.
        await page.Keyboard.PressAsync("Tab");
        return await page.EvaluateAsync<string[]>(Rings);
    }

    /// <summary>Things to touch that are smaller than 44 px.</summary>
    public static async Task<IReadOnlyList<string>> TooSmallAsync(this IPage page) => await page.EvaluateAsync<string[]>(Small);

    /// <summary>Sideways scroll, and controls cut by the window.</summary>
    public static async Task<IReadOnlyList<string>> OverflowAsync(this IPage page) => await page.EvaluateAsync<string[]>(Overflow);

    /// <summary>Chosen states that nothing shows once the system's colours are forced.</summary>
    public static async Task<IReadOnlyList<string>> LostStatesAsync(this IPage page)
    {
        await page.EmulateMediaAsync(new() { ForcedColors = ForcedColors.Active });
        var lost = await page.EvaluateAsync<string[]>(Chosen);
        await page.EmulateMediaAsync(new() { ForcedColors = ForcedColors.None });
        return lost;
    }

    /// <summary>The browser's text size, as its settings have it: 16 is usual, 32 is 200 %.</summary>
    public static async Task TextSizeAsync(this IPage page, int size)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Page.setFontSizes", new Dictionary<string, object> { ["fontSizes"] = new Dictionary<string, object> { ["standard"] = size, ["fixed"] = size * 13 / 16 } });
        await page.WaitForFunctionAsync("size => getComputedStyle(document.documentElement).fontSize === `${size}px`", size);
        await session.DetachAsync();
    }
}
