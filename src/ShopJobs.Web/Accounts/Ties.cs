using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>One thing that somebody did for another person at the door, and that no third person has confirmed since.</summary>
public sealed record Tie(PersonId By, DoorEvent What, DateTime At);

/// <summary>
/// Who is tied to whom: whoever added a person, gave him a right or made his PIN could stand in for him. Such a person is nobody's
/// second person for the one who did it, until a third signs that he knows him and that the PIN is his own.
/// </summary>
public static class Ties
{
    private static readonly DoorEvent[] Tying = [DoorEvent.PersonAdded, DoorEvent.RightGiven, DoorEvent.PinReset];
    private static readonly DoorEvent[] OfPins = [DoorEvent.PersonAdded, DoorEvent.PinReset, DoorEvent.PinChanged];

    /// <summary>The same as <see cref="TiesOfAsync"/>, as ids joined by commas, for a reader of the logbook. $1 is the person.</summary>
    internal const string Sql =
        """
        SELECT group_concat(DISTINCT tie.ByPersonId) FROM DoorNotes AS tie
        WHERE tie.PersonId = $1 AND tie.Event IN ('PersonAdded', 'RightGiven', 'PinReset') AND tie.ByPersonId <> $1
        AND NOT EXISTS (
            SELECT 1 FROM DoorNotes AS said
            WHERE said.PersonId = $1 AND said.Event = 'PersonConfirmed' AND said.Id > tie.Id AND said.ByPersonId NOT IN ($1, tie.ByPersonId))
        """;

    /// <summary>What ties a person to others, oldest first.</summary>
    public static async Task<IReadOnlyList<Tie>> TiesOfAsync(this ShopDbContext shop, PersonId person, CancellationToken cancellation = default)
    {
        var notes = await shop.DoorNotes.AsNoTracking()
            .Where(note => note.PersonId == person && note.ByPersonId != null && note.ByPersonId != person
                && (Tying.Contains(note.Event) || note.Event == DoorEvent.PersonConfirmed))
            .OrderBy(note => note.Id).ToListAsync(cancellation);
        return
        [
            .. notes.Where(tie => tie.Event != DoorEvent.PersonConfirmed
                    && !notes.Exists(said => said.Event == DoorEvent.PersonConfirmed && said.Id > tie.Id && said.ByPersonId != tie.ByPersonId))
                .Select(tie => new Tie(tie.ByPersonId!.Value, tie.Event, tie.At)),
        ];
    }

    /// <summary>True while somebody else knows the PIN: it was made for the person, and the person has taken none of their own since.</summary>
    public static async Task<bool> IsPinOfAnotherAsync(this ShopDbContext shop, PersonId person, CancellationToken cancellation = default)
    {
        var newest = await shop.DoorNotes.Where(note => note.PersonId == person && OfPins.Contains(note.Event))
            .OrderByDescending(note => note.Id).Select(note => (DoorEvent?)note.Event).FirstOrDefaultAsync(cancellation);
        return newest is DoorEvent.PersonAdded or DoorEvent.PinReset;
    }
}
