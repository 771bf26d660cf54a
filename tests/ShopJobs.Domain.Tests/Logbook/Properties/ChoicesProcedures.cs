using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

// The procedures of the jobs that are started.
internal static partial class Choices
{
    /// <summary>Number of the procedure that asks more of the wheel nuts than procedure 0.</summary>
    private const int OtherWheels = 4;

    /// <summary>Number of the procedure that asks another angle of the bolts than <see cref="Head"/>.</summary>
    private const int OtherHead = 8;

    private const int Head = 7;
    private const int Procedures = 9;

    /// <summary>The second job of a history that begins with this number: often one that asks something else of the same joint.</summary>
    public static int Beside(int first) => (first % (2 * Procedures)) switch
    {
        0 => OtherWheels,
        1 + Procedures => 0,
        Head + Procedures => OtherHead,
        _ => first / Procedures,
    };

    public static (Procedure Procedure, string[] Places) Procedure(int number) => (number % Procedures) switch
    {
        0 => (TestProcedures.Wheels(1, 2), [TestRegister.Left]),
        1 => (TestProcedures.Studs(1, 2), [TestRegister.Left]),
        2 => (TestProcedures.StrutWithCrowfoot(), [TestRegister.Left]),
        3 => (Soon(TestProcedures.Brake()), [TestRegister.Front]),
        OtherWheels => (TestProcedures.OtherWheels(1, 2), [TestRegister.Left]),
        5 => (TestProcedures.LinkWithRunDown(), [TestRegister.Front]),
        Head => (TestProcedures.Head(), [TestRegister.Left]),
        OtherHead => (TestProcedures.Head(92), [TestRegister.Left]),
        _ => (TestProcedures.Wheels(2, 1), [TestRegister.Left, TestRegister.Right]),
    };

    // To be done within an hour and a half of hand-tight.
    private static Procedure Soon(Procedure procedure) =>
        procedure with { Groups = [.. procedure.Groups.Select(group => group with { Within = TimeSpan.FromMinutes(90) })] };
}
