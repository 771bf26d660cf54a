using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Parts;

/// <summary>A shop with the wheel-stud procedure on one car, and the lead at the tablet. Kits and stack are invented.</summary>
internal sealed class PartsBench : IDisposable
{
    public ToolBench Shop { get; } = new();

    /// <summary>The stud group of the job.</summary>
    public GroupOfJob Studs { get; private set; }

    public void Register(IServiceCollection services) => Shop.Register(services);

    public async Task<PartsBench> OpenAsync(IServiceProvider? container = null)
    {
        await Shop.OpenAsync(container);
        var car = await Shop.CarAsync();
        Assert.True((await Shop.Get<ProcedureImport>().ImportAsync([Procedures.Documents.Register, Procedures.Documents.WheelStuds], Shop.Lead)).IsTaken);
        var digest = await Shop.RowsAsync(shop => shop.Procedures.Where(row => row.Code == "P3").Select(row => row.Digest).SingleAsync());
        var desk = Shop.Get<NewJob>();
        Assert.True((await desk.StartAsync(car, desk.Read(car, digest)!, ["front-left", "front-right"], "Studs")).Recorded);
        Studs = new GroupOfJob(car, await Shop.RowsAsync(shop => shop.Jobs.Select(job => job.Id).SingleAsync()), "stud");
        return this;
    }

    /// <summary>Everything compared, as a page reads it.</summary>
    public async Task<PartsOnJob> ReadAsync() =>
        (await Shop.Get<PartShelf>().ReadAsync(Shop.Get<CarDesk>().Read(Studs.Car, null), Studs.Job, Studs.Group))!;

    /// <summary>Enters a kit and gives its id.</summary>
    public async Task<PartOptionId> AddAsync(string name, string length = "42 mm", string? strength = "12.9")
    {
        var form = Kit(name, length, strength);
        Assert.Null(await Shop.Get<PartDesk>().SaveAsync(Studs, form));
        return form.Id;
    }

    /// <summary>Chooses an option as it stands now.</summary>
    public async Task<string?> ChooseAsync(PartOptionId option, string reason)
    {
        var shown = await ReadAsync();
        return await Shop.Get<PartDesk>().ChooseAsync(Studs, option, shown, reason);
    }

    /// <summary>What another lead does to the car's wheel stacks meanwhile: "changed" puts a washer under the nut.</summary>
    public async Task MeanwhileAsync(string what)
    {
        var desk = Shop.Get<StackDesk>();
        var row = (await ReadAsync()).Stacks[0];
        var form = StackForm.Of(row);
        form.Washer = "1";
        Assert.Null(what switch
        {
            "changed" => await desk.SaveAsync(Studs.Car, form),
            "added" => await desk.SaveAsync(Studs.Car, Stack("rear")),
            "removed" => await desk.RemoveAsync(Studs.Car, row.Id),
            _ => throw new ArgumentOutOfRangeException(nameof(what), what, "Not done to a stack."),
        });
    }

    /// <summary>Disc 7, wheel 14, closed cone nut of 20 mm thread and 24 mm depth.</summary>
    public async Task StackAsync() => Assert.Null(await Shop.Get<StackDesk>().SaveAsync(Studs.Car, Stack()));

    public static StackForm Stack(string name = "front") => new()
    {
        Name = name,
        HubFlange = "0",
        DiscHat = "7",
        Spacer = "0",
        WheelPad = "14",
        Washer = "0",
        WheelSeat = "cone 60",
        NutSeat = "60° cone",
        NutThread = "20",
        NutEnd = "24",
    };

    /// <summary>A kit of the procedure's thread, torque and condition.</summary>
    public static OptionForm Kit(string name, string length = "42 mm", string? strength = "12.9")
    {
        var form = new OptionForm { Maker = "Quillon", Name = name, Source = "Leaflet, rev. 3, side 1", Evidence = StrengthEvidence.Marked };
        Say(OptionProperty.Thread, "M12x1.5");
        Say(OptionProperty.Strength, strength);
        Say(OptionProperty.Length, length);
        Say(OptionProperty.Seat, "flat");
        Say(OptionProperty.Torque, "60..95 N·m");
        Say(OptionProperty.Jam, "90 N·m");
        Say(OptionProperty.Condition, "PreAppliedLocker");
        Say(OptionProperty.Pieces, "10");
        Say(OptionProperty.Price, "84.50 EUR");
        return form;

        void Say(OptionProperty property, string? text) =>
            (form.Values[property].Text, form.Values[property].NotStated) = (text ?? "", text is null);
    }

    public void Dispose() => Shop.Dispose();
}
