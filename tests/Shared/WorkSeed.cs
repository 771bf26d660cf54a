using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Data.Tools;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Tests.Shared;

/// <summary>
/// A shop with the demo's people and cars, one enrolled tablet, the register and procedures of <c>seed/</c> and four tools, and no
/// work but what a test puts there. Everything is invented.
/// </summary>
public sealed class WorkSeed(IServiceProvider services)
{
    /// <summary>The tablet's token: the value of its cookie <c>shop.tablet</c>.</summary>
    public const string TabletToken = "a-tablet-of-the-tests";

    private readonly DeviceId tablet = new(Guid.NewGuid());
    private readonly DeviceId office = new(Guid.NewGuid());
    private readonly Dictionary<string, Procedure> procedures = [];
    private string registerDigest = "";

    /// <summary>Click wrench, 40 to 200 N·m.</summary>
    public static readonly ToolId W7 = Id(7);

    /// <summary>Click wrench, 20 to 100 N·m.</summary>
    public static readonly ToolId W5 = Id(5);

    /// <summary>Click wrench, 5 to 25 N·m.</summary>
    public static readonly ToolId W3 = Id(3);

    /// <summary>Shows a reading, 20 to 200 N·m.</summary>
    public static readonly ToolId WA = Id(10);

    /// <summary>The folder <c>seed</c> of the repository this test was built from.</summary>
    public static DirectoryInfo Folder
    {
        get
        {
            for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            {
                if (File.Exists(Path.Combine(at.FullName, "ShopJobs.sln")))
                {
                    return new DirectoryInfo(Path.Combine(at.FullName, "seed"));
                }
            }

            throw new InvalidOperationException($"No ShopJobs.sln above {AppContext.BaseDirectory}.");
        }
    }

    /// <summary>The tablet that browsers of the tests have.</summary>
    public DeviceId Tablet => tablet;

    /// <summary>Opens the shop, imports the documents and enters the tools.</summary>
    public async Task FurnishAsync()
    {
        await OpenAsync();
        await ImportAsync();
        await EnterAsync(W3, "W3", ToolKind.Click, 5, 25, 0.5m, 320);
        await EnterAsync(W5, "W5", ToolKind.Click, 20, 100, 1, 400);
        await EnterAsync(W7, "W7", ToolKind.Click, 40, 200, 1, 460);
        await EnterAsync(WA, "WA", ToolKind.Indicating, 20, 200, 0.1m, 500);
    }

    /// <summary>Starts a job on a car and puts a person on it.</summary>
    public async Task<(CarId Car, JobId Job)> StartAsync(string carName, string code, string personName, params string[] places)
    {
        await using var shop = await ShopAsync();
        var car = (await shop.Cars.SingleAsync(row => row.Name == carName)).Id;
        var person = (await shop.People.SingleAsync(row => row.Name == personName)).Id;
        var lead = await LeadAsync(shop);
        var job = new JobId(Guid.NewGuid());
        var digest = (await shop.Procedures.SingleAsync(row => row.Code == code)).Digest;
        Require(await services.GetRequiredService<CarDesk>().RunAsync(
            car, NewCommand(), lead, new StartJob(job, procedures[code], digest, registerDigest, places)));
        shop.Jobs.Add(new Job
        {
            Id = job,
            CarId = car,
            ProcedureDigest = digest,
            RegisterDigest = registerDigest,
            Places = string.Join(',', places),
            Title = procedures[code].Title,
            StartedAt = Now,
            StartedBy = lead.Person,
        });
        shop.Assignments.Add(new Assignment { Id = Guid.NewGuid(), JobId = job, PersonId = person, From = Now });
        await shop.SaveChangesAsync();
        return (car, job);
    }

    /// <summary>Does something on a car as a person; it has to count.</summary>
    public async Task<DeskAnswer> DoAsync(CarId car, string personName, Command command)
    {
        var answer = await GiveAsync(car, personName, command);
        Require(answer);
        return answer;
    }

    /// <summary>Does something on a car as a person, whatever becomes of it.</summary>
    public async Task<DeskAnswer> GiveAsync(CarId car, string personName, Command command)
    {
        await using var shop = await ShopAsync();
        var person = await shop.People.SingleAsync(row => row.Name == personName);
        var here = new Present(person.Id, person.Name, person.Initials, tablet, default, new HashSet<Right>());
        return command switch
        {
            SignedCommand signed => await Signing.SignAsync(car, person.Id, DemoPeople.All.Single(one => one.Name == personName).Pin, signed),
            Report report => await services.GetRequiredService<CarDesk>().RunAsync(car, NewCommand(), here, report),
            _ => throw new ArgumentException($"{command.GetType().Name} is neither signed nor a report.", nameof(command)),
        };
    }

    private TabletSigning Signing => new(services, office);

    private DateTime Now => services.GetRequiredService<TimeProvider>().GetUtcNow().UtcDateTime;

    private async Task OpenAsync()
    {
        await using var shop = await ShopAsync();
        ShopSettings.Write(shop, new ShopFacts(DemoShop.Name, TimeZoneInfo.FindSystemTimeZoneById(DemoShop.Zone), Demo: true));
        var lead = services.GetRequiredService<DemoShop>().Furnish(shop, DateOnly.FromDateTime(Now), Now);
        await shop.SaveChangesAsync();
        shop.Tablets.Add(new Tablet
        {
            Id = tablet,
            Name = "Lift A",
            TokenHash = SHA256.HashData(Encoding.ASCII.GetBytes(TabletToken)),
            EnrolledBy = lead,
            EnrolledAt = Now,
        });
        shop.Tablets.Add(new Tablet { Id = office, Name = "Office", TokenHash = new byte[32], EnrolledBy = lead, EnrolledAt = Now });
        await shop.SaveChangesAsync();
        await services.GetRequiredService<ShopSettings>().LoadAsync();
    }

    private async Task ImportAsync()
    {
        await using var shop = await ShopAsync();
        var yaml = await File.ReadAllBytesAsync(Path.Combine(Folder.FullName, "joint-register.yaml"));
        var register = JointRegisterDocument.Load(yaml, "joint-register.yaml");
        registerDigest = register.Digest;
        shop.JointRegisters.Add(new JointRegisterRevision { Digest = registerDigest, Yaml = yaml, ImportedAt = Now, Current = true });
        foreach (var file in Folder.GetDirectories("procedures").Single().GetFiles("*.yaml"))
        {
            var bytes = await File.ReadAllBytesAsync(file.FullName);
            var loaded = ProcedureDocument.Load(bytes, file.Name, register.Value!);
            var procedure = loaded.Value ?? throw new InvalidOperationException(string.Join("\n", loaded.Errors));
            procedures[procedure.Code] = procedure;
            shop.Procedures.Add(new ProcedureRevision
            {
                Digest = loaded.Digest,
                Code = procedure.Code,
                Title = procedure.Title,
                Revision = procedure.Revision,
                Yaml = bytes,
                Demo = true,
                ImportedAt = Now,
            });
        }

        await shop.SaveChangesAsync();
    }

    private async Task EnterAsync(ToolId id, string name, ToolKind kind, decimal lowest, decimal top, decimal graduation, decimal length)
    {
        await using var shop = await ShopAsync();
        var lead = await LeadAsync(shop);
        var row = new ToolRow { Id = id.Value, Name = name };
        row.Touch(lead.Person, Now);
        shop.Tools.Add(row);
        await shop.SaveChangesAsync();
        var desk = services.GetRequiredService<ToolDesk>();
        var today = DateOnly.FromDateTime(Now);
        var points = new CalibrationPoint[] { new(lowest, lowest), new(top, top) };
        Require(await desk.RunAsync(id, NewCommand(), lead, new EnterTool(new TorqueTool(
            id, name, $"NB-{name}", kind, TorqueUnit.NewtonMetre, lowest, top, graduation, 4)
        { LengthMm = length })));
        Require(await Signing.SignAsync(id, lead.Person, DemoPeople.Lead.Pin, (shown, asOf) => new Calibrate(
            new Calibration(today.AddDays(-60), today.AddDays(300), "Rig sheet, invented", points, points), shown, asOf)));
    }

    private async Task<Present> LeadAsync(ShopDbContext shop)
    {
        var lead = await shop.People.SingleAsync(row => row.Name == DemoPeople.Lead.Name);
        return new Present(lead.Id, lead.Name, lead.Initials, tablet, default, new HashSet<Right>());
    }

    private Task<ShopDbContext> ShopAsync() => services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();

    private static CommandId NewCommand() => new(Guid.NewGuid());

    private static ToolId Id(short number) => new(new Guid(0x700, number, 0, new byte[8]));

    private static void Require(DeskAnswer answer)
    {
        if (!answer.Counts)
        {
            throw new InvalidOperationException(
                answer.NotSaved ?? string.Join("; ", answer.Reasons.Select(reason => reason.Words).Concat(
                    answer.Entries.SelectMany(entry => entry.Problems).Select(problem => problem.ToString()))));
        }
    }
}
