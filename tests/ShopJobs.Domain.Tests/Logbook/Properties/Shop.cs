using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>The shops that histories are played in: told apart by the number a history begins with.</summary>
internal static class Shop
{
    /// <summary>One shop has no register; in every third the wheel's condition is of a place, ends with its strut's opening, and has an age.</summary>
    public static JointRegister Register(int first) => (first % 81, first % 3) switch
    {
        (80, _) => TestRegister.With(2) with { Kinds = new Dictionary<string, JointKind>() },
        (_, 1) => TestRegister.With(2) with
        {
            Aspects = new Dictionary<string, ConditionAspect> { ["wheel"] = new(true, 20, [TestRegister.StrutClamp, TestRegister.Stud]) },
        },
        _ => TestRegister.With(2),
    };

    /// <summary>In every fourth shop Tess gave Theo his right, and no third person has confirmed him.</summary>
    public static IReadOnlyDictionary<PersonId, IReadOnlySet<PersonId>> Ties(int first) => first % 4 == 3
        ? new Dictionary<PersonId, IReadOnlySet<PersonId>> { [TestPerson.Theo.Id] = new HashSet<PersonId> { TestPerson.Tess.Id } }
        : new Dictionary<PersonId, IReadOnlySet<PersonId>>();
}
