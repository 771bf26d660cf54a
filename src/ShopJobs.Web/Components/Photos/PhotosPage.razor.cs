using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Photos;

/// <summary>The photographs of a car on its visit, and where they are taken.</summary>
public sealed partial class PhotosPage(CorrectionDesk corrections, CarEntries entries, PeopleShelf people)
{
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private IReadOnlyDictionary<ContentDigest, string> captions = new Dictionary<ContentDigest, string>();

    /// <summary>Entry of the photograph that is looked at.</summary>
    [SupplyParameterFromQuery(Name = "photo")]
    private long? Number { get; set; }

    /// <summary>Why the form was refused that led here.</summary>
    [SupplyParameterFromQuery(Name = "said")]
    private string? Said { get; set; }

    /// <summary>Entry that the form made that led here.</summary>
    [SupplyParameterFromQuery(Name = "taken")]
    private long? Taken { get; set; }

    private PhotoRefusal? Refused => Enum.GetNames<PhotoRefusal>().Contains(Said, StringComparer.Ordinal) ? Enum.Parse<PhotoRefusal>(Said!) : null;

    private PhotoBook? Shown => Number is { } number ? Reading!.State.Photos.Find(photo => photo.Number == number) : null;

    private bool MayTake => Present?.May(Right.Record) == true && Reading?.Unreadable is null;

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        if (Reading is { } reading)
        {
            names = await people.NamesAsync();
            captions = entries.Texts(reading.State.Photos.Select(photo => photo.Fact.Caption).OfType<ContentDigest>());
        }
    }

    private string? CaptionOf(PhotoBook photo) => photo.Fact.Caption is { } digest ? captions.GetValueOrDefault(digest) : null;

    private string WhoOf(PhotoBook photo) => names.GetValueOrDefault(photo.Person, "somebody not in the book");

    private string WhenOf(PhotoBook photo) => WallTime.Minute(Reading!.Now.OnTheWall(photo.At));

    private bool MayVoid(PhotoBook photo) =>
        CorrectionUse.Of(Reading!.State, new Recorded(photo.Number, photo.At, photo.Person, photo.Fact), Present) == EntryUse.Correct;

    private async Task VoidAsync(string reason)
    {
        Answer = await corrections.VoidAsync(CarId, new CommandId(Guid.NewGuid()), Number!.Value, null, reason);
        await ReadAsync();
    }
}
