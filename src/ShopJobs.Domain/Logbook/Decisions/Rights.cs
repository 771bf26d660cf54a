namespace ShopJobs.Domain.Logbook;

/// <summary>What a person may do, dated. A right, not a role name, is what a decision is given.</summary>
public enum Right
{
    Record,
    Witness,
    Author,
    Decide,
    Release,
    Lead,
}
