using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.CustomerData;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;
using ShopJobs.Web.Tests.Summaries;

namespace ShopJobs.Web.Tests.CustomerData;

/// <summary>Blue's owner with personal words in every place that keeps some.</summary>
internal sealed class CustomerBench(OpenShop shop, Browser tablet, SummaryBench work)
{
    public const string Name = "Wilmet Oarsby";
    public const string Contact = "01632 960177, wilmet@mail.example";
    public const string Plate = "WO 177";
    public const string Chassis = "ZZ9WX177AX0000042";
    public const string Note = "Rings only after six.";
    public const string Asked = "Wheels before my holiday in June.";
    public const string Why = "Vibration since my trip to Sandmouth.";
    public const string Fetched = "Brother Torvin Oarsby";
    public const string Accepted = "I go on track before the re-torque, Wilmet.";
    public const string Said = "Thanks, my back is better too.";

    /// <summary>Every personal text, none of which may be left.</summary>
    public static readonly string[] Personal =
        [Name, "960177", "wilmet@mail.example", Plate, Chassis, Note, Asked, Why, Fetched, Accepted, Said];

    private decimal odometer = 48200;

    public SummaryBench Work => work;

    /// <summary>The shop's first tablet; nobody is signed in on it.</summary>
    public Browser Tablet => tablet;

    public CustomerId Customer { get; private set; }

    public string Link { get; private set; } = "";

    public CustomerEraser Eraser => shop.Services.GetRequiredService<CustomerEraser>();

    public static async Task<CustomerBench> SetUpAsync(OpenShop shop)
    {
        var tablet = shop.NewBrowser();
        await tablet.SubmitAsync(
            "/start", "empty", ("Form.ShopName", "Ninth Bay"), ("Form.LeadName", "Edda"), ("Form.Zone", "Europe/Berlin"));
        var bench = new CustomerBench(shop, tablet, await SummaryBench.SetUpAsync(shop.Services, Asked));
        await bench.FillAsync();
        return bench;
    }

    /// <summary>The file as the lead gets it.</summary>
    public async Task<string> FileAsync(CustomerId? customer = null) =>
        Encoding.UTF8.GetString((await shop.Services.GetRequiredService<CustomerFiles>().WriteAsync(customer ?? Customer))!);

    /// <summary>The lead signs what is shown now, or what was shown before.</summary>
    public async Task<DeskAnswer> EraseAsync(ErasurePlan? shown = null)
    {
        var plan = shown ?? Eraser.Plan(Customer)!;
        var request = plan.ToSign(new CommandId(Guid.NewGuid()));
        var proof = await new TabletSigning(shop.Services, work.Lead.Tablet).ProveAsync(work.Lead.Person, DemoPeople.Lead.Pin, request.Command, request.Shown);
        return await Eraser.EraseAsync(plan.Customer, proof, request.Command, request.Shown);
    }

    /// <summary>The job ends and the car goes.</summary>
    public async Task LeaveAsync()
    {
        await work.DoAsync(new CancelJob(work.Job, work.Reason.Digest, "00"), work.Reason);
        await GoneAsync(Fetched);
    }

    public async Task ComeAsync(string why)
    {
        var text = Text(why);
        await work.DoAsync(new ComeIn(new OdometerReading(odometer += 100, DistanceUnit.Kilometre), "Floor", text.Digest), text);
    }

    /// <summary>A photograph of the car is taken.</summary>
    public async Task<ContentDigest> PhotographAsync(string caption)
    {
        var (picture, words) = (NewContent.Of([0xFF, 0xD8, 0xFF, 0xD9]), Text(caption));
        await work.DoAsync(new TakePhoto(picture.Digest, CarView.Rear) { Caption = words.Digest }, picture, words);
        return picture.Digest;
    }

    public async Task GoneAsync(string takenBy)
    {
        var (by, why) = (Text(takenBy), Text("It was fetched."));
        await work.DoAsync(new ReportGone(WayOut.OnTrailer, by.Digest, null, why.Digest), by, why);
    }

    private static NewContent Text(string words) => NewContent.Of(Encoding.UTF8.GetBytes(words));

    private async Task FillAsync()
    {
        var token = CustomerToken.New();
        Link = $"/s/{token}";
        Customer = await shop.RowsAsync(async rows =>
        {
            var car = await rows.Cars.Include(row => row.Customer).SingleAsync(row => row.Id == work.Car);
            (car.Mark, car.Chassis, car.Note, car.Customer!.Name, car.Customer.Contact) = (Plate, Chassis, Note, Name, Contact);
            var now = shop.Time.GetUtcNow().UtcDateTime;
            rows.CustomerLinks.Add(new CustomerLink
            {
                Id = Guid.NewGuid(),
                TokenHash = CustomerToken.HashOf(token)!,
                CarId = car.Id,
                CreatedAt = now,
                CreatedBy = work.Lead.Person,
                ExpiresAt = now.AddDays(30),
            });
            await rows.SaveChangesAsync();
            return car.CustomerId;
        });
        shop.Time.Advance(TimeSpan.FromMinutes(1));
        await work.IssueAsync();
        await shop.NewBrowser().PostAsync(Link, ("version", "1"), ("words", Said));
        await GoneAsync(Fetched);
        await ComeAsync(Why);
        var accepted = Text(Accepted);
        var reading = shop.Services.GetRequiredService<CarDesk>().Read(work.Car, work.Lead.Person);
        await work.DoAsync(reading.State.AsShown(reading.Now, new Release(ReleaseKind.Move, 48310, new Acceptance("Wilmet", new DateOnly(2026, 3, 2), SaidHow.InWriting, "folder 7", Accepted) { Kept = accepted.Digest }, "00")), accepted);
    }
}
