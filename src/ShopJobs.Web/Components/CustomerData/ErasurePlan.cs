using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>What erasing a customer's personal data takes away, and what it leaves.</summary>
/// <param name="Name">The customer as the book has it.</param>
/// <param name="Goes">What goes, a line each.</param>
/// <param name="Cautions">What should be done with the customer first.</param>
/// <param name="Refusals">Why it can't be done now; empty when it can.</param>
public sealed record ErasurePlan(
    CustomerId Customer, string Name, bool Erased, IReadOnlyList<string> Goes, IReadOnlyList<string> Cautions, IReadOnlyList<string> Refusals)
{
    /// <summary>What stays, in every case.</summary>
    public static readonly IReadOnlyList<string> Stays =
    [
        "The work records: every fastener with its torque, tool, time and who did it. The law asks a shop to keep them. Their chain verifies as before.",
        "The cars themselves by make, model and the name the shop calls them, with their visits, odometers and releases.",
        "Reasons and findings that people of the shop wrote about the work.",
        "That a text was there, and that it was erased.",
        "Copies outside the program: backups until they are written over, prints, mails.",
    ];

    /// <summary>Texts, pages and pictures to erase.</summary>
    internal IReadOnlyList<ContentDigest> Contents { get; init; } = [];

    /// <summary>The customer's cars, those that were sold too.</summary>
    internal IReadOnlyList<OwnedCar> Cars { get; init; } = [];

    /// <summary>What the lead signs.</summary>
    public SignRequest ToSign(CommandId command) => new(
        "ERASE: for good",
        $"{Name}: erase the personal data",
        [.. Goes.Select(line => $"Goes: {line}"), .. Stays.Select(line => $"Stays: {line}"), .. Cautions, "It can not be undone."],
        command)
    {
        Needs = Right.Lead,
    };

    /// <summary>Reads what is there; null when there is no such customer.</summary>
    internal static ErasurePlan? Of(LogbookReader reader, CustomerId customer)
    {
        var row = reader.Row(
            $"customer:{customer.Value}", "SELECT coalesce(ErasedAt, '') || char(10) || Name FROM Customers WHERE Id = $1", [customer.Value], text => text as string);
        if (row?.Split('\n', 2) is not [var erased, var name])
        {
            return null;
        }

        var tools = Surroundings.AllTools(reader);
        var held = OwnedCar.Of(reader, customer).Select(car => OwnedEntries.Of(reader, car, tools)).ToList();
        var contents = held.SelectMany(car => car.Contents).Distinct().Where(digest => reader.Content(digest) is StoredContent.Present or StoredContent.Altered).ToList();
        return new ErasurePlan(
            customer, name, erased.Length > 0, ErasureWords.Goes(reader, customer, held, contents), ErasureWords.Cautions(held, tools), ErasureWords.Refusals(held))
        {
            Contents = contents,
            Cars = [.. held.Select(car => car.Car)],
        };
    }
}
