using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Domain.Tools;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Data.Tools;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Benchmarks;

/// <summary>A shop on a database file of its own: one lead, one click wrench, the wheel fit-up of the seed.</summary>
internal sealed class BenchShop : IDisposable
{
    private const string Pin = "470913";
    private static readonly string Seed = Path.Combine(AppContext.BaseDirectory, "benchmark-seed");
    private readonly ServiceProvider services;
    private readonly string registerDigest;
    private readonly string procedureDigest;
    private readonly Procedure procedure;

    public BenchShop(string folder)
    {
        Folder = new DataFolder(folder, folder);
        services = new ServiceCollection().AddLogging().AddSingleton(TimeProvider.System)
            .AddShopData(Folder).AddDesks(Folder).AddSingleton<ShopSettings>().AddSingleton<ShopClock>().BuildServiceProvider();
        services.MigrateShopAsync().GetAwaiter().GetResult();
        var registerYaml = File.ReadAllBytes(Path.Combine(Seed, "joint-register.yaml"));
        var procedureYaml = File.ReadAllBytes(Path.Combine(Seed, "procedures", "P5-wheel-fit-up.yaml"));
        var register = JointRegisterDocument.Load(registerYaml, "register").Value!;
        procedure = ProcedureDocument.Load(procedureYaml, "P5", register).Value!;
        (registerDigest, procedureDigest) = (DocumentDigest.Of(registerYaml), DocumentDigest.Of(procedureYaml));
        AddRows(registerYaml, procedureYaml);
        Desk = services.GetRequiredService<CarDesk>();
        AddTool(services.GetRequiredService<ToolDesk>());
    }

    public DataFolder Folder { get; }

    public CarDesk Desk { get; }

    public ToolId Wrench { get; } = new(Guid.NewGuid());

    public Present Lead { get; } = new(
        new PersonId(Guid.NewGuid()), "Lead", "LE", new DeviceId(Guid.NewGuid()), new SessionId(Guid.NewGuid()), Enum.GetValues<Right>().ToHashSet());

    public T Service<T>()
        where T : notnull => services.GetRequiredService<T>();

    /// <summary>A car with all twenty nuts hand-tight, wheels up and hubs held.</summary>
    public (CarId Car, JobId Job) CarWithNutsOn()
    {
        var (car, job) = (new CarId(Guid.NewGuid()), new JobId(Guid.NewGuid()));
        var places = PlacedProcedure.PlacesOf(procedure, JointRegisterOf());
        Do(car, new StartJob(job, procedure, procedureDigest, registerDigest, places));
        var nuts = places.SelectMany(place => Enumerable.Range(1, 5).Select(number => new JointPosition("wheel.nut", place, number))).ToList();
        Do(car, new OpenPositions(nuts, job, null));
        SignAll(car, job, "faces", places);
        Do(car, new HandTighten(job, "wheel-nuts", nuts, []));
        SignAll(car, job, "by-hand", places);
        SignAll(car, job, "snug", places);
        Do(car, new DeclareCondition([new CarCondition("stand", "wheel-up"), new CarCondition("hub", "held")]) { Places = places });
        return (car, job);
    }

    /// <summary>One pull to 50 N·m, number 0 to 19 in the order of the pattern.</summary>
    public RecordTorque Pull(JobId job, int index)
    {
        int[] star = [1, 3, 5, 2, 4];
        var place = procedure.Steps[0].Places[index / 5];
        return new RecordTorque(
            job, "wheel-nuts", new JointPosition("wheel.nut", place, star[index % 5]), 1, 1, index % 5,
            TorqueKind.SettingConfirmed, new EnteredTorque(50, TorqueUnit.NewtonMetre), Wrench, []);
    }

    /// <summary>A pull that counts: otherwise the wrong thing would be measured.</summary>
    public void DoCounting(CarId car, RecordTorque pull)
    {
        if (!Do(car, pull).Counts)
        {
            throw new InvalidOperationException($"The pull on {pull.Position} does not count.");
        }
    }

    public DeskAnswer Do(CarId car, Command command)
    {
        var answer = command switch
        {
            SignedCommand signed => Signing.SignAsync(car, Lead.Person, Pin, signed).GetAwaiter().GetResult(),
            Report report => Desk.RunAsync(car, new CommandId(Guid.NewGuid()), Lead, report).GetAwaiter().GetResult(),
            _ => throw new ArgumentException($"{command.GetType().Name} is neither signed nor a report.", nameof(command)),
        };
        return answer.Recorded ? answer : throw new InvalidOperationException(answer.NotSaved ?? answer.Reasons[0].Words);
    }

    private TabletSigning Signing => new(services, Lead.Tablet);

    public void Dispose()
    {
        services.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(Folder.Root, recursive: true);
    }

    private void SignAll(CarId car, JobId job, string id, IReadOnlyList<string> places)
    {
        var step = procedure.Steps.First(step => step.Id == id);
        foreach (var place in places)
        {
            Do(car, new ConfirmStep(
                job,
                $"{id}@{place}",
                [.. step.Ticks.Select(tick => tick.Id)],
                [.. step.Measures.Select(measure => new MeasuredValue(measure.Id, measure.Minimum ?? 9, measure.Unit))],
                NotApplicable: false,
                Reason: null,
                Shown: ""));
        }
    }

    private static JointRegister JointRegisterOf() =>
        JointRegisterDocument.Load(File.ReadAllBytes(Path.Combine(Seed, "joint-register.yaml")), "register").Value!;

    private void AddRows(byte[] registerYaml, byte[] procedureYaml)
    {
        using var shop = services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContext();
        shop.People.Add(new Person { Id = Lead.Person, Name = "Lead", Initials = "LE", PinHash = new PasswordHasher<Person>().HashPassword(null!, Pin), Active = true });
        shop.Tablets.Add(new Tablet { Id = Lead.Tablet, Name = "Bench", TokenHash = new byte[32], EnrolledBy = Lead.Person });
        shop.Rights.AddRange(Enum.GetValues<Right>().Select(right => new PersonRight
        {
            Id = Guid.NewGuid(),
            PersonId = Lead.Person,
            Right = right,
            From = new DateOnly(2000, 1, 1),
        }));
        shop.JointRegisters.Add(new JointRegisterRevision { Digest = registerDigest, Yaml = registerYaml, Current = true });
        shop.Procedures.Add(new ProcedureRevision
        {
            Digest = procedureDigest,
            Code = procedure.Code,
            Title = procedure.Title,
            Revision = procedure.Revision,
            Yaml = procedureYaml,
            Demo = true,
        });
        shop.Tools.Add(new ToolRow { Id = Wrench.Value, Name = "W7" });
        shop.SaveChanges();
    }

    private void AddTool(ToolDesk tools)
    {
        var today = DateOnly.FromDateTime(DateTime.UtcNow);
        Require(tools.RunAsync(Wrench, new CommandId(Guid.NewGuid()), Lead, new EnterTool(new TorqueTool(Wrench, "W7", "1", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1))));
        Require(Signing.SignAsync(Wrench, Lead.Person, Pin, (shown, asOf) => new Calibrate(
            new Calibration(today, today.AddYears(1), "bench", [], [new(40, 40), new(120, 120), new(200, 200)]), shown, asOf)));

        static void Require(Task<DeskAnswer> asked)
        {
            var answer = asked.GetAwaiter().GetResult();
            if (!answer.Recorded)
            {
                throw new InvalidOperationException(answer.NotSaved ?? answer.Reasons[0].Words);
            }
        }
    }
}
