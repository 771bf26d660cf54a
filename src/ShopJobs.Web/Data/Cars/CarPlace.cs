namespace ShopJobs.Web.Data.Cars;

/// <summary>Where a car stands.</summary>
public enum CarPlace
{
    LiftA,
    LiftB,
    Floor,
    Outside,
}
