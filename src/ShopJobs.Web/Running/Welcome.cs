using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Running;

/// <summary>What the console says once the shop is open.</summary>
internal static class Welcome
{
    /// <param name="toOpen">True before the first start chose between the demo shop and an empty one.</param>
    internal static void Print(TextWriter console, IEnumerable<string> addresses, ShopFacts shop, bool toOpen)
    {
        console.WriteLine(toOpen
            ? $"{shop.Name} waits at {string.Join(", ", addresses)}: choose there between the demo shop and an empty one."
            : $"{shop.Name} is open at {string.Join(", ", addresses)}");
        if (!shop.Demo && !toOpen)
        {
            return;
        }

        console.WriteLine(toOpen ? "Demo data. Once the demo shop is started, sign in with:" : "Demo data. Sign in with:");
        foreach (var person in DemoPeople.All)
        {
            console.WriteLine($"  {person.Name,-6} PIN {person.Pin}  {person.Does}");
        }
    }
}
