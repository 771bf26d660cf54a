namespace ShopJobs.Domain.Tests.Specification.Proof;

/// <summary>The people one by one.</summary>
internal static class Persons
{
    public static readonly People[] Each = [People.Ann, People.Bob, People.Cy];

    public static bool Has(this People people, People person) => (people & person) != 0;
}
