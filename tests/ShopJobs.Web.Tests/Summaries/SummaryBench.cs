using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.Summaries;

/// <summary>Blue with the wheel procedure on it, in a shop without work; its lead Edda does everything.</summary>
internal sealed class SummaryBench
{
    public const string Place = "front-left";
    private const string Shown = "00";

    private readonly IServiceProvider services;

    private SummaryBench(IServiceProvider services, Car car, Present lead)
    {
        this.services = services;
        Car = car.Id;
        Lead = lead;
    }

    public CarId Car { get; }

    public Present Lead { get; }

    public JobId Job { get; private set; }

    public IReadOnlyList<JointPosition> Nuts { get; } = [.. Enumerable.Range(1, 5).Select(number => new JointPosition("wheel.nut", Place, number))];

    public static async Task<SummaryBench> SetUpAsync(IServiceProvider services, string askedFor = "Fit my wheels, please.")
    {
        await using var shop = await services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        var lead = await shop.People.SingleAsync(person => person.Name == DemoPeople.Lead.Name);
        lead.PinHash = new PasswordHasher<Person>().HashPassword(lead, DemoPeople.Lead.Pin);
        await shop.SaveChangesAsync();
        var present = new Present(
            lead.Id, lead.Name, lead.Initials, await TabletAsync(shop, lead.Id), new SessionId(Guid.NewGuid()), Enum.GetValues<Right>().ToHashSet());
        var bench = new SummaryBench(services, await BlueAsync(shop), present);
        await bench.StartAsync(shop, askedFor);
        return bench;
    }

    public async Task<DeskAnswer> DoAsync(Command command, params NewContent[] contents)
    {
        var answer = command switch
        {
            SignedCommand signed => await new TabletSigning(services, Lead.Tablet).SignAsync(Car, Lead.Person, DemoPeople.Lead.Pin, signed, contents),
            Report report => await services.GetRequiredService<CarDesk>().RunAsync(Car, new CommandId(Guid.NewGuid()), Lead, report, contents),
            _ => throw new ArgumentException($"{command.GetType().Name} is neither signed nor a report.", nameof(command)),
        };
        return answer.Recorded ? answer : throw new InvalidOperationException(
            answer.NotSaved ?? string.Join("; ", answer.Reasons.Select(reason => reason.Words)));
    }

    /// <summary>A reason as somebody types it.</summary>
    public NewContent Reason { get; } = NewContent.Of(Encoding.UTF8.GetBytes("Looks wrong."));

    /// <summary>Releases the car as it stands, at 48,210 km.</summary>
    public Task ReleaseAsync(ReleaseKind kind)
    {
        var reading = services.GetRequiredService<CarDesk>().Read(Car, Lead.Person);
        return DoAsync(reading.State.AsShown(reading.Now, new Release(kind, 48210, null, Shown) { Closing = kind == ReleaseKind.Move ? null : ClosingCheck.All }));
    }

    public Task OpenNutsAsync() => DoAsync(new OpenPositions(Nuts, Job, null));

    /// <summary>Issues the next version; gives its bytes.</summary>
    public async Task<byte[]> IssueAsync()
    {
        var draft = await DraftAsync();
        var content = NewContent.Of(draft.Bytes);
        await DoAsync(new IssueSummary(content.Digest, draft.AsOf, Shown), content);
        return draft.Bytes;
    }

    public async Task<SummaryDraft> DraftAsync()
    {
        await using var scope = services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<SummaryDesk>().DraftAsync(Car, new SummaryForm { Contact = "01632 960100" }, Lead)
            ?? throw new InvalidOperationException("Blue is not there.");
    }

    private static async Task<DeviceId> TabletAsync(ShopDbContext shop, PersonId by)
    {
        var tablet = new Tablet { Id = new DeviceId(Guid.NewGuid()), Name = "Bench", TokenHash = new byte[32], EnrolledBy = by, EnrolledAt = DateTime.UnixEpoch };
        shop.Tablets.Add(tablet);
        await shop.SaveChangesAsync();
        return tablet.Id;
    }

    private static async Task<Car> BlueAsync(ShopDbContext shop)
    {
        if (await shop.Cars.SingleOrDefaultAsync(car => car.Name == DemoCars.Blue.Name) is { } blue)
        {
            return blue;
        }

        var customer = new Customer { Id = new CustomerId(Guid.NewGuid()), Name = DemoCars.Blue.Owner };
        blue = new Car { Id = new CarId(Guid.NewGuid()), CustomerId = customer.Id, Name = DemoCars.Blue.Name, Model = DemoCars.Blue.Model };
        shop.AddRange(customer, blue);
        return blue;
    }

    private async Task StartAsync(ShopDbContext shop, string askedFor)
    {
        var (yaml, digest) = Seed("joint-register.yaml");
        var register = JointRegisterDocument.Load(yaml, "register").Value!;
        shop.JointRegisters.Add(new JointRegisterRevision { Digest = digest, Yaml = yaml, ImportedAt = DateTime.UnixEpoch, Current = true });
        var (text, procedureDigest) = Seed("procedures/P5-wheel-fit-up.yaml");
        var procedure = ProcedureDocument.Load(text, "P5", register).Value!;
        shop.Procedures.Add(new ProcedureRevision
        {
            Digest = procedureDigest,
            Code = procedure.Code,
            Title = procedure.Title,
            Revision = procedure.Revision,
            Yaml = text,
            ImportedAt = DateTime.UnixEpoch,
        });
        Job = new JobId(Guid.NewGuid());
        shop.Jobs.Add(new Job
        {
            Id = Job,
            CarId = Car,
            ProcedureDigest = procedureDigest,
            RegisterDigest = digest,
            Places = Place,
            Title = procedure.Title,
            AskedFor = askedFor,
            StartedAt = DateTime.UnixEpoch,
            StartedBy = Lead.Person,
        });
        await shop.SaveChangesAsync();
        await DoAsync(new StartJob(Job, procedure, procedureDigest, digest, [Place]));
    }

    private static (byte[] Bytes, string Digest) Seed(string name)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "ShopJobs.sln")))
        {
            root = root.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        }

        var bytes = File.ReadAllBytes(Path.Combine(root.FullName, "seed", name));
        return (bytes, Convert.ToHexStringLower(SHA256.HashData(bytes)));
    }
}
