using System.Collections.Immutable;

namespace ShopJobs.Domain.Logbook;

/// <summary>One photograph of the car.</summary>
public sealed record PhotoBook(long Number, DateTime At, PersonId Person, PhotoTaken Fact);

// Photographs of the newest visit. Those of earlier visits, and those that were void, are in the book.
public sealed partial record CarState
{
    /// <summary>Photographs taken since the car last came in, oldest first, without those that were voided.</summary>
    public ImmutableList<PhotoBook> Photos { get; init; } = [];

    /// <summary>The newest photograph of each view.</summary>
    public IReadOnlyDictionary<CarView, PhotoBook> PhotosByView =>
        Photos.Where(photo => photo.Fact.View is not null).GroupBy(photo => photo.Fact.View!.Value).ToDictionary(view => view.Key, view => view.Last());

    /// <summary>Photographs of anything else, oldest first.</summary>
    public IReadOnlyList<PhotoBook> OtherPhotos => [.. Photos.Where(photo => photo.Fact.View is null)];

    private CarState WithPhoto(Recorded recorded, PhotoTaken fact) =>
        Remember(recorded) with { Photos = Photos.Add(new PhotoBook(recorded.Number, recorded.At, recorded.Person, fact)) };

    // A picture taken by mistake says nothing about the work: nothing rests on it, and no release waits for it.
    private CarState WithoutPhoto(long number) => this with { Photos = Photos.RemoveAll(photo => photo.Number == number) };
}
