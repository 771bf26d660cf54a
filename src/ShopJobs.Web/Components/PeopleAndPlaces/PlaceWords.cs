using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>What kinds of place are called.</summary>
public static class PlaceWords
{
    public static string Words(this PlaceKind kind) => kind switch
    {
        PlaceKind.Lift => "Lift, for one car",
        PlaceKind.Floor => "Floor, room for several cars",
        _ => "Outside, room for several cars",
    };
}
