using ShopJobs.Web.Data.Cars;

namespace ShopJobs.Web.Components.Cars;

/// <summary>How the shop says where a car stands.</summary>
public static class CarPlaceWords
{
    /// <summary>A place as entries name it; its key where the shop has no such place any more.</summary>
    public static string OfKey(string key) => Enum.TryParse<CarPlace>(key, out var place) && Enum.IsDefined(place) ? place.Words() : key;

    public static string Words(this CarPlace place) => place switch
    {
        CarPlace.LiftA => "Lift A",
        CarPlace.LiftB => "Lift B",
        CarPlace.Floor => "Floor place",
        CarPlace.Outside => "Outside",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Not a place of the shop."),
    };
}
