using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Tools;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>The program with a wheel that is hand-tight, tools with keys, and pages that report what they are offered as a tablet does.</summary>
internal sealed class DeviceBench : IDisposable
{
    private readonly Dictionary<ToolId, string> keys = [];
    private CarId car;
    private JobId job;

    public OpenShop Shop { get; } = new();

    /// <summary>Readings that pages were offered.</summary>
    public List<OfferedReading> Offered { get; } = [];

    public CarState State => Shop.Services.GetRequiredService<CarDesk>().Read(car, null).State;

    public IEnumerable<Pull> Pulls => State.Positions.Values.SelectMany(book => book.Pulls);

    public void Dispose() => Shop.Dispose();

    /// <summary>The shop with a hand-tight wheel; WA and W7 have keys.</summary>
    public async Task<DeviceBench> OpenAsync()
    {
        await Shop.Services.MigrateShopAsync();
        var seed = new WorkSeed(Shop.Services);
        await seed.FurnishAsync();
        (car, job) = await seed.StartAsync("Blue", "P5", DemoPeople.Chassis.Name, "front-left");
        await DoAsync(new OpenPositions(Nuts, job, null));
        await DoAsync(new ConfirmStep(job, "faces@front-left", ["faces-bare", "cones-bare", "threads-dry", "hub-ring"], [], false, null, ""));
        await DoAsync(new HandTighten(job, "wheel-nuts", Nuts, []));
        await DoAsync(new ConfirmStep(job, "by-hand@front-left", [], [new MeasuredValue("turns", 9, "turns")], false, null, ""));
        await DoAsync(new ConfirmStep(job, "snug@front-left", ["seated"], [], false, null, ""));
        await DoAsync(new DeclareCondition([new CarCondition("stand", "wheel-up"), new CarCondition("hub", "held")]) { Places = ["front-left"] });
        foreach (var tool in (ToolId[])[WorkSeed.WA, WorkSeed.W7])
        {
            await NewKeyAsync(tool);
        }

        return this;

        Task DoAsync(Command command) => seed.DoAsync(car, DemoPeople.Chassis.Name, command);
    }

    /// <summary>The key of a tool.</summary>
    public string KeyOf(ToolId tool) => keys[tool];

    /// <summary>A page of a tablet stands at a pull of this nut with a tool picked, and reports what it is offered.</summary>
    public IDisposable Stand(ToolId tool, int nut = 1, DeviceId? tablet = null) =>
        Picked.Put(new PickedTool(tool, tablet ?? new DeviceId(new Guid(1, 0, 0, new byte[8])), (reading, _) => ReportAsync(tool, nut, reading)));

    /// <summary>A page that answers so, whatever it is offered.</summary>
    public IDisposable Stand(ToolId tool, TabletOutcome outcome, string words = "") =>
        Picked.Put(new PickedTool(tool, new DeviceId(new Guid(1, 0, 0, new byte[8])), (reading, _) =>
        {
            Offered.Add(reading);
            return Task.FromResult(new TabletAnswer(outcome, [words]));
        }));

    /// <summary>A reading of WA, of now.</summary>
    public JsonObject Reading(string value = "50.2") => new()
    {
        ["command"] = Guid.NewGuid(),
        ["value"] = value,
        ["unit"] = "N·m",
        ["at"] = Shop.Time.GetUtcNow(),
    };

    public Task<(HttpStatusCode Status, JsonObject Body)> SendAsync(JsonObject reading, string? key = null) =>
        SendAsync(reading.ToJsonString(), key ?? KeyOf(WorkSeed.WA));

    public async Task<(HttpStatusCode Status, JsonObject Body)> SendAsync(string body, string? key, string contentType = "application/json")
    {
        using var client = Shop.CreateClient(new() { AllowAutoRedirect = false, HandleCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, "/devices/readings") { Content = new StringContent(body, Encoding.UTF8) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue(contentType);
        request.Headers.Authorization = key is null ? null : new AuthenticationHeaderValue("Bearer", key);
        using var answer = await client.SendAsync(request);
        var text = await answer.Content.ReadAsStringAsync();
        // Whoever tries too often is told so in plain text, before anything is read.
        return (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType == "application/json" ? JsonNode.Parse(text)!.AsObject() : []);
    }

    private static IReadOnlyList<JointPosition> Nuts => [.. Enumerable.Range(1, 5).Select(new Joint("wheel.nut", "front-left").At)];

    private PickedTools Picked => Shop.Services.GetRequiredService<PickedTools>();

    private async Task NewKeyAsync(ToolId tool)
    {
        keys[tool] = ToolKeyDesk.NewKey();
        await Shop.RowsAsync(rows =>
        {
            rows.ToolKeys.Add(new ToolKeyRow { Id = Guid.NewGuid(), ToolId = tool.Value, KeyHash = ToolKeyDesk.HashOf(keys[tool]), MadeAt = DateTime.UnixEpoch });
            return rows.SaveChangesAsync();
        });
    }

    private async Task<TabletAnswer> ReportAsync(ToolId tool, int nut, OfferedReading reading)
    {
        Offered.Add(reading);
        var person = await Shop.RowsAsync(rows => rows.People.SingleAsync(row => row.Name == DemoPeople.Chassis.Name));
        var here = new Present(person.Id, person.Name, person.Initials, default, default, new HashSet<Right>());
        var visit = ((int[])[1, 3, 5, 2, 4]).ToList().IndexOf(nut);
        var at = Nuts[nut - 1];
        await Shop.Services.GetRequiredService<CarDesk>().RunAsync(
            car, reading.Id, here, new RecordTorque(job, "wheel-nuts", at, State.Of(at).Cycle, 1, visit, TorqueKind.Reading, reading.Value, tool, []));
        return new TabletAnswer(TabletOutcome.Settled, []);
    }
}
