using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Running;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Logbook;

namespace ShopJobs.Web.Tests.TorqueTools;

/// <summary>A shop on a folder of its own with a lead, two technicians and one tablet; the services go into any container.</summary>
internal sealed class ToolBench : IDisposable
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);
    public static readonly DateOnly Today = new(2026, 3, 2);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("tools-");
    /// <summary>Everybody's PIN.</summary>
    public const string Pin = "470913";

    private static readonly string PinHash = new PasswordHasher<Person>().HashPassword(null!, Pin);
    private readonly DeviceId tablet = new(Guid.NewGuid());
    private readonly DeviceId signingTablet = new(Guid.NewGuid());
    private ServiceProvider? own;
    private IServiceProvider? services;

    public FakeTimeProvider Time { get; } = new(Noon);

    public PersonId Lead { get; } = new(Guid.NewGuid());

    public PersonId Technician { get; } = new(Guid.NewGuid());

    public PersonId Newcomer { get; } = new(Guid.NewGuid());

    public FakeCircuit Circuit { get; } = new();

    /// <summary>The program's services on this folder.</summary>
    public void Register(IServiceCollection collection)
    {
        var configuration = new ConfigurationBuilder().Build();
        var data = new DataFolder(folder.FullName, folder.FullName);
        collection.AddSingleton<IConfiguration>(configuration);
        collection.AddLogging();
        collection.AddShopData(data).AddDesks(data);
        collection.AddSingleton<TimeProvider>(Time);
        collection.AddSingleton<Listening>().AddSingleton<ShopSettings>().AddSingleton<ShopClock>();
        collection.AddAccounts(configuration).AddFeatures();
        collection.AddSingleton<AuthenticationStateProvider>(Circuit);
    }

    /// <summary>Migrates, and enters people and tablet. With no container given it builds its own.</summary>
    public async Task<ToolBench> OpenAsync(IServiceProvider? container = null)
    {
        if (container is null)
        {
            var collection = new ServiceCollection();
            Register(collection);
            container = own = collection.BuildServiceProvider();
        }

        services = container;
        await container.MigrateShopAsync();
        await using var shop = await container.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        shop.People.Add(Person(Lead, "Edda", [.. RightSets.OfTheLead]));
        shop.People.Add(Person(Technician, "Jorn", [Right.Record, Right.Witness]));
        shop.People.Add(Person(Newcomer, "Sefa", [Right.Record]));
        shop.Tablets.Add(new Tablet { Id = signingTablet, Name = "Office", TokenHash = [2], EnrolledBy = Lead, EnrolledAt = Noon.UtcDateTime });
        shop.Tablets.Add(new Tablet { Id = tablet, Name = "Lift A", TokenHash = [1], EnrolledBy = Lead, EnrolledAt = Noon.UtcDateTime });
        await shop.SaveChangesAsync();
        await SignInAsync(Lead);
        return this;
    }

    public T Get<T>()
        where T : notnull => services!.GetRequiredService<T>();

    /// <summary>Signs a command on a tool as a person, whoever is signed in.</summary>
    public Task<DeskAnswer> SignAsync(
        Domain.Tools.ToolId tool, PersonId signer, Func<string, long, SignedToolCommand> command, params NewContent[] contents)
    {
        // At a tablet of its own: who is signed in at the other stays there.
        return new TabletSigning(services!, signingTablet).SignAsync(tool, signer, Pin, command, contents);
    }

    public async Task SignInAsync(PersonId person)
    {
        var session = await Get<SessionDesk>().OpenAsync(person, tablet);
        Circuit.User = PersonClaims.Of(session, "somebody");
    }

    public void SignOut() => Circuit.User = new ClaimsPrincipal(new ClaimsIdentity());

    public async Task<T> RowsAsync<T>(Func<ShopDbContext, Task<T>> ask)
    {
        await using var shop = await Get<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        return await ask(shop);
    }

    public static ToolForm Form(string name = "W7", string serial = "S-71") => new()
    {
        Name = name,
        Serial = serial,
        LowestMarked = "40",
        Top = "200",
        Graduation = "1",
    };

    /// <summary>Enters a click wrench of 40..200 N·m, calibrated good on a day.</summary>
    public async Task<Domain.Tools.ToolId> WrenchAsync(string name = "W7", DateOnly? calibrated = null)
    {
        var form = Form(name, $"S-{name}");
        Assert.True((await Get<ToolShelf>().SaveAsync(form)).Recorded);
        var day = calibrated ?? Today.AddMonths(-2);
        await CalibrateAsync(form.Id, day, null, "40", "110", "200");
        return form.Id;
    }

    /// <summary>Enters a calibration with these readings at 40, 110 and 200.</summary>
    public async Task CalibrateAsync(Domain.Tools.ToolId id, DateOnly day, string[]? found, params string[] left)
    {
        var calibration = new CalibrationForm { Date = day, Due = day.AddYears(1), Certificate = "Bench 4, 12" };
        string[] sets = ["40", "110", "200"];
        for (var i = 0; i < sets.Length; i++)
        {
            calibration.Points.Add(new() { Set = sets[i], Found = found?[i] ?? "", Left = left[i] });
        }

        var fact = calibration.ToCalibration(Get<ToolShelf>().Find(id)!.Tool);
        var answer = await SignAsync(id, Lead, (shown, asOf) => new Calibrate(fact, shown, asOf));
        Assert.True(answer.Recorded, answer.NotSaved ?? string.Join(" ", answer.Reasons));
    }

    /// <summary>A car called Blue and its owner.</summary>
    public Task<CarId> CarAsync() => RowsAsync(async shop =>
    {
        var owner = new Customer { Id = new CustomerId(Guid.NewGuid()), Name = "Rasmo Field" };
        var car = new Car { Id = new CarId(Guid.NewGuid()), CustomerId = owner.Id, Name = "Blue", Model = "Brennock 220" };
        owner.Touch(Lead, Noon.UtcDateTime);
        car.Touch(Lead, Noon.UtcDateTime);
        shop.AddRange(owner, car);
        await shop.SaveChangesAsync();
        return car.Id;
    });

    /// <summary>Does to the file what somebody with a SQLite shell could.</summary>
    public void Sql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Get<DataFolder>().Database};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only a test's own text reaches it.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    /// <summary>Puts entries into a logbook as the program would have written them.</summary>
    public Task WriteAsync(LogbookId logbook, params Entry[] entries) => WriteAsync(logbook, [], [.. entries.Select(entry => New(logbook, entry))]);

    /// <summary>As the other, with contents, and with entries of any kind.</summary>
    public async Task WriteAsync(LogbookId logbook, IReadOnlyList<NewContent> contents, IReadOnlyList<NewEntry> entries)
    {
        var result = await Get<LogbookWriter>().RunAsync(
            new CommandId(Guid.NewGuid()),
            new byte[32],
            new Stamp(Technician, Technician, tablet),
            reader =>
            {
                reader.Head(logbook);
                return new Decision.Accept(entries, contents, NoteBook.Answer(""));
            },
            CancellationToken.None);
        Assert.IsType<RunResult.Saved>(result);
    }

    public static NewEntry New(LogbookId logbook, Entry entry)
    {
        var (kind, version, payload) = EntryCodec.Encode(entry);
        return new NewEntry(logbook, kind, version, payload, entry.Facets().Keys);
    }

    public void Dispose()
    {
        own?.Dispose();
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    private static Person Person(PersonId id, string name, Right[] rights)
    {
        var person = new Person { Id = id, Name = name, Initials = name[..2].ToUpperInvariant(), PinHash = PinHash };
        person.Touch(null, Noon.UtcDateTime);
        person.Rights.AddRange(rights.Select(right => new PersonRight
        {
            Id = Guid.NewGuid(),
            PersonId = id,
            Right = right,
            From = Today.AddDays(-1),
        }));
        return person;
    }

    public sealed class FakeCircuit : AuthenticationStateProvider
    {
        public ClaimsPrincipal User { get; set; } = new(new ClaimsIdentity());

        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(User));
    }
}
