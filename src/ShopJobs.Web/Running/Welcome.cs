using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Running;

/// <summary>What the console says once the shop is open.</summary>
internal static class Welcome
{
    internal static void Print(TextWriter console, IEnumerable<string> addresses, ShopFacts shop)
    {
        console.WriteLine($"{shop.Name} is open at {string.Join(", ", addresses)}");
        if (!shop.Demo)
        {
            return;
        }

        console.WriteLine("Demo shop, invented data. Sign in with:");
        foreach (var person in DemoPeople.All)
        {
            console.WriteLine($"  {person.Name,-6} PIN {person.Pin}  {person.Does}");
        }
    }
}
