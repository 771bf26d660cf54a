using System.Reflection;
using NetArchTest.Rules;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.Architecture;

/// <summary>A command that has to be signed is of a type that only the signing path takes, and that path takes a proof.</summary>
public sealed class SigningPathTests
{
    private static readonly Assembly Product = typeof(CarDesk).Assembly;
    private static readonly Type[] Commands = [.. typeof(Command).Assembly.GetTypes().Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(Command)))];
    private static readonly Type[] ToolCommands = [.. typeof(Command).Assembly.GetTypes().Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(ToolCommand)))];

    [Fact]
    public void What_is_signed_on_a_car_is_a_signed_command() => Assert.Equal(
        [
            nameof(AdoptRevision), nameof(CancelJob), nameof(ChangeJointList), nameof(ConfirmCorrection), nameof(ConfirmStep), nameof(Countersign), nameof(DecideHold), nameof(DecideRow),
            nameof(DecideWork), nameof(EndJob), nameof(ExtendReTorque), nameof(IssueSummary), nameof(LookAtJoints), nameof(LookOver), nameof(RecordResult),
            nameof(RecordSettled), nameof(Release), nameof(Restate), nameof(ResumeJob), nameof(TakeJobBack), nameof(UpholdRelease),
            nameof(WithdrawRelease), nameof(Witness),
        ],
        Names(Commands.Where(type => type.IsAssignableTo(typeof(SignedCommand)))));

    [Fact]
    public void What_is_signed_on_a_tool_is_a_signed_command() => Assert.Equal(
        [nameof(Calibrate), nameof(CheckInstrument), nameof(ClearTool), nameof(WithdrawCalibration)], Names(ToolCommands.Where(type => type.IsAssignableTo(typeof(SignedToolCommand)))));

    [Fact]
    public void Every_other_command_is_a_report()
    {
        Assert.All(Commands, type => Assert.NotEqual(type.IsAssignableTo(typeof(SignedCommand)), type.IsAssignableTo(typeof(Report))));
        Assert.All(ToolCommands, type => Assert.NotEqual(type.IsAssignableTo(typeof(SignedToolCommand)), type.IsAssignableTo(typeof(ToolReport))));
    }

    [Fact]
    public void Whatever_runs_a_signed_command_takes_the_proof()
    {
        var running = Open(typeof(CarDesk), typeof(ToolDesk), typeof(ClockDesk), typeof(ErasureDesk))
            .Where(method => method.ReturnType == typeof(Task<DeskAnswer>))
            .Where(method => method.GetParameters().Any(parameter => TakesSigned(parameter.ParameterType))).ToList();

        Assert.Equal(["CarDesk.SignAsync", "ClockDesk.SignAsync", "ErasureDesk.SignAsync", "ToolDesk.SignAsync"], running.Select(method => $"{method.DeclaringType!.Name}.{method.Name}").Order());
        Assert.All(running, method => Assert.Contains(method.GetParameters(), parameter => parameter.ParameterType == typeof(SignatureProof)));
    }

    [Fact]
    public void Nothing_is_written_into_a_logbook_past_the_desks() => Assert.Equal(
        [nameof(CarDesk), nameof(ClockDesk), nameof(ErasureDesk), nameof(ToolDesk)],
        Types.InAssembly(Product).That().HaveDependencyOn(typeof(LogbookWriter).FullName).GetTypes()
            .Where(type => type.Namespace != typeof(LogbookWriter).Namespace)
            .Select(type => type.IsNested ? type.DeclaringType! : type).Select(type => type.Name).Distinct().Order());

    [Fact]
    public void Nobody_else_makes_a_proof() => Assert.All(
        typeof(SignatureProof).GetConstructors(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public), made => Assert.True(made.IsPrivate));

    private static bool TakesSigned(Type parameter) =>
        parameter.IsAssignableFrom(typeof(SignedCommand)) || parameter.IsAssignableFrom(typeof(SignedToolCommand)) || parameter == typeof(SetClock) || parameter == typeof(EraseContents);

    private static IEnumerable<MethodInfo> Open(params Type[] desks) => desks.SelectMany(desk => desk.GetMethods(
        BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)).Where(method => !method.IsPrivate);

    private static IEnumerable<string> Names(IEnumerable<Type> types) => types.Select(type => type.Name).Order(StringComparer.Ordinal);
}
