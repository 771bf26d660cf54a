using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>The shops that histories are played in: told apart by the number a history begins with.</summary>
internal static class Shop
{
    /// <summary>One shop has no register; in every fifth the strut's clamp is reached with the wheel off only; in every third the wheel's condition is of a place, ends with its strut's opening, and has an age.</summary>
    public static JointRegister Register(int first) => first % 5 == 4 ? ClampBehindWheel(Written(first)) : Written(first);

    private static JointRegister ClampBehindWheel(JointRegister register) => register with
    {
        Kinds = register.Kinds.Values.ToDictionary(kind => kind.Key, kind => kind.Key == TestRegister.StrutClamp ? kind with { Behind = TestRegister.Nut } : kind),
    };

    private static JointRegister Written(int first) => (first % 81, first % 3) switch
    {
        (80, _) => TestRegister.With(2) with { Kinds = new Dictionary<string, JointKind>() },
        (_, 1) => WithResults() with
        {
            Aspects = new Dictionary<string, ConditionAspect> { ["wheel"] = new(true, 20, [TestRegister.StrutClamp, TestRegister.Stud]) },
        },
        _ => WithResults(),
    };

    // Pads are bedded in on a drive, weights are measured with the scales, and a bleed says its fluid.
    private static JointRegister WithResults()
    {
        var register = TestRegister.With(2);
        var brake = register.Kinds[TestRegister.BrakeBolt] with { Undoes = [new Undone(UndoneKind.Result, "bed-in")] };
        return register with
        {
            Kinds = register.Kinds.Values.Select(kind => kind.Key == brake.Key ? brake : kind).ToDictionary(kind => kind.Key),
            Results = ["alignment", "corner-weights", "bleed", "bed-in"],
            ResultKinds = new[]
            {
                ResultKind.Bare("bed-in") with { AfterDrive = true, Measures = [new Measure("value", "Stops", "mm", 100, null)] },
                ResultKind.Bare("corner-weights") with { NeedsInstrument = true },
                ResultKind.Bare("bleed") with { HoldsMove = true, Notes = [new ResultNote("grade", "Grade", ["DOT 4"], false)] },
            }.ToDictionary(kind => kind.Key),
        };
    }

    /// <summary>In every fourth shop Tess gave Theo his right, and no third person has confirmed him.</summary>
    public static IReadOnlyDictionary<PersonId, IReadOnlySet<PersonId>> Ties(int first) => first % 4 == 3
        ? new Dictionary<PersonId, IReadOnlySet<PersonId>> { [TestPerson.Theo.Id] = new HashSet<PersonId> { TestPerson.Tess.Id } }
        : new Dictionary<PersonId, IReadOnlySet<PersonId>>();
}
