using System.Globalization;
using Microsoft.AspNetCore.Http;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>A second person beside the lead, who looked at the cars: asked where a register takes joints away from them.</summary>
public sealed class SecondLook(SignatureDesk signatures, PeopleShelf people, LogbookSnapshots snapshots)
{
    /// <summary>Names of the form's fields.</summary>
    public const string PersonField = "second", PinField = "second-pin";

    /// <summary>Who may be asked beside this lead, by name.</summary>
    public async Task<IReadOnlyList<PeopleShelf.Named>> OfferedAsync(Present lead, CancellationToken cancellation = default) =>
        [.. (await people.WithRightAsync(Right.Witness, cancellation: cancellation)).Where(person => person.Id != lead.Person)];

    /// <summary>Takes the second person's PIN for what was shown.</summary>
    /// <returns>Who looked; or why nobody did.</returns>
    public async Task<(PersonId? By, string? Refusal)> AskAsync(Present lead, IFormCollection form, string mark, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(lead);
        ArgumentNullException.ThrowIfNull(form);
        if (!lead.May(Right.Lead))
        {
            return (null, "This register takes joints away from cars. Only somebody with the lead's right takes it in.");
        }

        if (!Guid.TryParse(form[PersonField], CultureInfo.InvariantCulture, out var id) || (await OfferedAsync(lead, cancellation)).All(person => person.Id.Value != id))
        {
            return (null, "Pick the second person, who looked at the cars.");
        }

        var second = new PersonId(id);
        if (snapshots.Read(reader => Surroundings.TiedTo(reader, second)).Contains(lead.Person))
        {
            return (null, "You two are no second person for each other: one enrolled the other, gave the right or made the PIN, and no third has confirmed it. Pick another.");
        }

        return await signatures.VerifyAsync(second, form[PinField], new CommandId(Guid.NewGuid()), Convert.FromHexString(mark), cancellation) is SignatureAnswer.Refused no
            ? (null, no.Words)
            : (second, null);
    }
}
