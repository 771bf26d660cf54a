using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>A line on which everything takes 300 ms there and back, and a person who types on it with 60 ms between keys.</summary>
internal sealed class SlowTyping(IPage page, TcpProxy line)
{
    /// <summary>Between one key and the next, in ms.</summary>
    public const int BetweenKeys = 60;

    private const string Fields =
        "input:not([type=checkbox], [type=radio], [type=date], [type=hidden], [type=file], [readonly], [disabled]):visible, textarea:not([readonly], [disabled]):visible";

    private const string FactsOf =
        "field => JSON.stringify({ Id: field.id, Secret: field.type === 'password', Digits: ['decimal', 'numeric', 'none'].includes(field.inputMode), Most: field.maxLength })";

    private static readonly TimeSpan OneWay = TimeSpan.FromMilliseconds(150);
    private readonly HashSet<string> typed = [];

    /// <summary>Every field that did not hold what was typed into it: where, what was typed, what stood there.</summary>
    public List<string> Lost { get; } = [];

    /// <summary>Ids of all fields that were typed into.</summary>
    public HashSet<string> Typed { get; } = [];

    /// <summary>Goes to a page; its fields have not been typed into yet.</summary>
    /// <param name="script">What happens there first; null for nothing.</param>
    public async Task OpenAsync(string address, bool hasLine, string? script = null)
    {
        line.OneWay = TimeSpan.Zero;
        typed.Clear();
        await (hasLine ? page.OpenAsync(address) : page.GotoAsync(address));
        if (script is not null)
        {
            await page.EvaluateAsync(script);
        }
    }

    /// <summary>Touches whatever shows these words, with the line as it should be.</summary>
    public async Task TouchAsync(string words)
    {
        line.OneWay = TimeSpan.Zero;
        var said = page.GetByText(words, new() { Exact = true }).Or(page.GetByRole(AriaRole.Button, new() { NameRegex = new($"^{Regex.Escape(words)}") }));
        await said.Locator("visible=true").First.ClickAsync(new() { Timeout = 15_000 });
        await ThereAndBackAsync(2);
    }

    /// <summary>Types into every field in sight under this that was not typed into on this page, and reads what stands there.</summary>
    public async Task TypeAsync(string under)
    {
        await page.Locator(under).First.WaitForAsync();
        while (await NextAsync(under) is { } field)
        {
            var facts = JsonSerializer.Deserialize<Field>(await field.EvaluateAsync<string>(FactsOf)) ?? throw new InvalidOperationException("No field.");
            Assert.True(facts.Id.Length > 0, $"{page.Url}: a field without an id: {await field.EvaluateAsync<string>("field => field.outerHTML")}");
            typed.Add(facts.Id);
            Typed.Add(facts.Id);
            await KeepsAsync(facts, asked => asked.PressSequentiallyAsync(facts.Words, new() { Delay = BetweenKeys }));
            if (facts.Secret)
            {
                // Short of the last digit, which signs.
                var tapped = facts with { Most = facts.Words.Length - 1 };
                await KeepsAsync(tapped, asked => asked.EvaluateAsync(
                    """
                    async (field, [digits, pause]) => {
                        for (const digit of digits) {
                            field.closest('[data-pin-pad]').querySelector(`[data-pin-key="${digit}"]`).click();
                            await new Promise(next => setTimeout(next, pause));
                        }
                    }
                    """,
                    new object[] { tapped.Words, BetweenKeys }));
            }
        }
    }

    private async Task<ILocator?> NextAsync(string under)
    {
        foreach (var field in await page.Locator(under).Locator(Fields).AllAsync())
        {
            if (!typed.Contains(await field.GetAttributeAsync("id") ?? ""))
            {
                return field;
            }
        }

        return null;
    }

    private async Task KeepsAsync(Field facts, Func<ILocator, Task> type)
    {
        var field = page.Locator($"[id='{facts.Id}']");
        line.OneWay = TimeSpan.Zero;
        await field.FillAsync("");
        await ThereAndBackAsync(2);
        line.OneWay = OneWay;
        await type(field);
        await ThereAndBackAsync(3);
        var stands = await field.InputValueAsync();
        if (stands != facts.Words)
        {
            Lost.Add($"{page.Url} #{facts.Id}: typed “{facts.Words}”, there stands “{stands}”");
        }
    }

    // By the line itself: whatever the server answers to the last key has come by then.
    private Task ThereAndBackAsync(int times) => page.EvaluateAsync("async times => { for (let i = 0; i < times; i++) await fetch('/healthz', { cache: 'no-store' }); }", times);

    private sealed record Field(string Id, bool Secret, bool Digits, int Most)
    {
        public string Words => (Secret ? "470913" : Digits ? "48155" : "Cone 4 was dry") is var words && Most > 0 && Most < words.Length ? words[..Most] : words;
    }
}
