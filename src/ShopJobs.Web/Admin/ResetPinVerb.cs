using System.CommandLine;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Admin;

/// <summary>A new PIN for somebody, from the machine itself: the way back in when the only lead forgot theirs.</summary>
internal static class ResetPinVerb
{
    internal static Command Command()
    {
        var name = new Argument<string>("name") { Description = "Name of the person as on the sign-in page." };
        var data = VerbServices.DataOption();
        var command = new Command("reset-pin", "Give a person a new random PIN and show it once.") { name, data };
        command.SetAction((parsed, cancellation) =>
            ResetAsync(parsed.GetValue(name)!, parsed.GetValue(data), parsed.InvocationConfiguration.Output, cancellation));
        return command;
    }

    private static async Task<int> ResetAsync(string name, string? folder, TextWriter output, CancellationToken cancellation)
    {
        await using var services = await VerbServices.OpenAsync(folder, cancellation);
        await using var shop = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync(cancellation);
        var person = await shop.People.SingleOrDefaultAsync(row => row.Name == name && row.Active, cancellation);
        if (person is null)
        {
            await output.WriteLineAsync($"Nobody called \"{name}\" works here. Give the name as the sign-in page shows it.");
            return 1;
        }

        var now = services.GetRequiredService<TimeProvider>().GetUtcNow().UtcDateTime;
        var pin = NewPin.Give(shop, new PasswordHasher<Person>(), person, by: null, now);
        await shop.SaveChangesAsync(cancellation);
        await output.WriteLineAsync($"The new PIN of {person.Name} is {pin}. It is not shown again.");
        return 0;
    }
}
