using System.Globalization;

namespace ShopJobs.Domain.Logbook;

// The reasons of a car that comes, is moved, is driven or leaves, and of its odometer.
internal static class VisitSentences
{
    public static (string Words, string Next)? Of(HoldPoint point, HoldSubject on) => point.Reason switch
    {
        HoldReason.NotReleased when point.Km is { } end => ($"Its release to the road ended at {on.Names.Distance.Say(end)}", "release it again, or take it on a trailer"),
        HoldReason.NotReleased => ("There is no valid release to the road", "release it, or take it on a trailer"),
        HoldReason.AlreadyHere => ("The car is here already", "record that it left first, if it did"),
        HoldReason.NotHere => ("The car is not here", "record that it came in first"),
        HoldReason.PlaceTaken => ($"{point.Name} is there", $"record first where {point.Name} is now, or choose another place"),
        HoldReason.PlaceNotInUse => ($"{point.Name} is not in use", "choose another place; the lead brings a place back under People and places"),
        HoldReason.AlreadyThere => ("The car is there already", "choose the place it goes to"),
        HoldReason.NothingToLookOver => ("No move of this car waits to be looked over", "go on with the work"),
        HoldReason.NoNewInterval => (
            on.With("a new interval is given once, on the last day of a re-torque or after it, to a car that was not driven far enough"), "re-torque it"),
        HoldReason.MovedAnyway => (
            $"The car was moved on {(point.At is { } moved ? WallTime.Minute(on.Names.OnTheWall(moved)) : "a day")} while it was not to be moved, and nobody has looked it over since",
            "look at the joints that were loose, then sign that you did"),
        HoldReason.OdometerBelowLast => (
            $"The odometer is lower than the {on.Names.Distance.Say(point.Km ?? 0)} of last time", "read it again; if the clock was changed, say so"),
        HoldReason.DriverMissing => ("Nobody is named to drive the road test", "name one person"),
        HoldReason.DistanceMissing => ("No distance is given for the road test", "type how far it goes"),
        HoldReason.ClosingCheckMissing => (
            point.Choices.Count > 0 ? $"The closing check is not whole: {string.Join("; ", point.Choices)}" : "The closing check is not whole", "look at the car, then tick what you saw"),
        HoldReason.NoRoadTest => ("The car is not out on a road test", "look at the release page again"),
        HoldReason.OdometerMissing => ("The odometer is not given", "read it: the re-torque is due by distance"),
        _ => null,
    };
}
