using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>An invented person of the test shop with rights.</summary>
internal sealed record TestPerson(string Name, PersonId Id, IReadOnlySet<Right> Rights)
{
    public static readonly TestPerson Tess = Of("Tess", 1, Right.Record, Right.Witness);
    public static readonly TestPerson Theo = Of("Theo", 2, Right.Record, Right.Witness, Right.Decide);
    public static readonly TestPerson Lee = Of("Lee", 3, Right.Record, Right.Witness, Right.Author, Right.Decide, Right.Release, Right.Lead);
    public static readonly TestPerson Nobody = Of("Nobody", 4);

    public static readonly TestPerson Tia = Of("Tia", 5, Right.Trainee);

    public static readonly IReadOnlyList<TestPerson> All = [Tess, Theo, Lee, Nobody, Tia];

    public override string ToString() => Name;

    private static TestPerson Of(string name, int number, params Right[] rights) =>
        new(name, new PersonId(new Guid(number, 0, 0, new byte[8])), rights.ToHashSet());
}
