using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>The program as a process, a line to it that can be cut, and a browser: shared by the tests of one class.</summary>
public sealed class LostConnectionShop : IAsyncLifetime
{
    private static readonly string[] Places = ["front-left", "front-right", "rear-left", "rear-right"];
    private readonly Queue<(string Car, string Place)> wheels = new(DemoCars.All.SelectMany(car => Places.Select(place => (car.Name, place))));
    private readonly List<IBrowserContext> tablets = [];

    public DemoFolder Folder { get; private set; } = null!;

    public ShopServer Server { get; private set; } = null!;

    public TcpProxy Line { get; private set; } = null!;

    public ShopBrowser Chrome { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        Folder = await DemoFolder.MakeAsync();
        Server = await ShopServer.StartAsync(Folder.Folder);
        Line = new TcpProxy(Server.Address);
        Chrome = await ShopBrowser.StartAsync();
    }

    public async Task DisposeAsync()
    {
        await Chrome.DisposeAsync();
        await Line.DisposeAsync();
        await Server.DisposeAsync();
        await Folder.DisposeAsync();
    }

    /// <summary>A wheel nobody touched yet, its five nuts hand-tight, its car standing as the first stage asks, on a tablet.</summary>
    public async Task<LostConnectionTablet> NextWheelAsync(Domain.Tools.ToolId tool)
    {
        Line.Restore();
        foreach (var old in tablets)
        {
            await old.CloseAsync();
        }

        tablets.Clear();
        var (carName, place) = wheels.Dequeue();
        var (car, job) = await Folder.Work.StartAsync(carName, "P5", DemoPeople.Chassis.Name, place);
        var nuts = Enumerable.Range(1, 5).Select(new Joint("wheel.nut", place).At).ToList();
        await DoAsync(new OpenPositions(nuts, job, null));
        await DoAsync(Sign("faces", ["faces-bare", "cones-bare", "threads-dry", "hub-ring"]));
        await DoAsync(new HandTighten(job, "wheel-nuts", nuts, []));
        await DoAsync(Sign("by-hand", [], new MeasuredValue("turns", 9, "turns")));
        await DoAsync(Sign("snug", ["seated"]));
        await DoAsync(new DeclareCondition([new CarCondition("stand", "wheel-up"), new CarCondition("hub", "held")]) { Places = [place] });

        var context = await Chrome.TabletAsync(Line.Address);
        tablets.Add(context);
        var path = $"/cars/{car.Value}/jobs/{job.Value}/steps/stage-50@{place}";
        var page = await ShopBrowser.SignInAsync(context, DemoPeople.Chassis, $"{path}?tool={tool.Value}");
        var tablet = new LostConnectionTablet(this, context, page, car, nuts, path);
        await tablet.StandsAtAsync(1);
        await tablet.LiveAsync();
        return tablet;

        Task DoAsync(Command command) => Folder.Work.DoAsync(car, DemoPeople.Chassis.Name, command);

        ConfirmStep Sign(string step, string[] ticks, params MeasuredValue[] values) =>
            new(job, $"{step}@{place}", ticks, values, false, null, "");
    }
}
