using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.LogbookPages;

/// <summary>
/// A second person confirms a correction with their PIN. The car stands on the road with every wheel nut at torque; each test
/// takes a nut of its own, restates its pull too low and then right again, which counts only when it is confirmed.
/// </summary>
public sealed class ConfirmCorrectionTests(OpenDemo demo) : IClassFixture<OpenDemo>, IAsyncLifetime
{
    private static readonly ShownLines Shown = new("SIGN: by me", "A correction", ["as it was on the screen"]);
    private readonly OpenShop shop = demo.Shop;
    private DemoTablet tablet = default!;
    private CarId car;

    private CarDesk Cars => shop.Services.GetRequiredService<CarDesk>();

    public async Task InitializeAsync()
    {
        var people = await shop.RowsAsync(rows => rows.People.ToDictionaryAsync(person => person.Name, person => person.Id));
        tablet = shop.Services.GetRequiredService<DemoTablets>().Take(people, "confirm");
        car = await shop.RowsAsync(rows => rows.Cars.Where(row => row.Name == DemoCars.White.Name).Select(row => row.Id).SingleAsync());
        await tablet.SitDownAsync(DemoPeople.Chassis);
    }

    public Task DisposeAsync() => tablet.PutAwayAsync();

    [Fact]
    public async Task The_leads_signature_makes_the_right_value_count()
    {
        var waiting = await WaitingAsync(Nut(1));

        var answer = await ConfirmAsync(DemoPeople.Lead, waiting, "Looked at the wrench: 110");

        Assert.True(answer.Counts);
        Assert.True(Counts(Nut(1)));
        var entry = Entry(answer.Entries[0].Number);
        Assert.Equal(await IdAsync(DemoPeople.Lead), entry.Person);
        Assert.NotNull(entry.Entry.SignedAs);
        var confirmed = Assert.IsType<CorrectionConfirmed>(entry.Entry);
        Assert.Equal("Looked at the wrench: 110", shop.Services.GetRequiredService<CarEntries>().Texts([confirmed.Reason])[confirmed.Reason]);
    }

    [Fact]
    public async Task A_person_without_the_right_to_decide_confirms_nothing()
    {
        var waiting = await WaitingAsync(Nut(2));

        var answer = await ConfirmAsync(DemoPeople.Newcomer, waiting, "Looks right");

        Assert.Equal([HoldReason.NoRight], answer.Reasons.Select(reason => reason.Reason));
        Assert.False(Counts(Nut(2)));
    }

    [Fact]
    public async Task Whoever_made_the_correction_does_not_confirm_it()
    {
        var waiting = await WaitingAsync(Nut(3), DemoPeople.Lead);

        var answer = await ConfirmAsync(DemoPeople.Lead, waiting, "I know it");

        Assert.Equal([HoldReason.OwnWork], answer.Reasons.Select(reason => reason.Reason));
        Assert.False(Counts(Nut(3)));
    }

    [Fact]
    public async Task Sent_twice_it_is_recorded_once_and_anew_it_is_refused()
    {
        var waiting = await WaitingAsync(Nut(4));
        var id = new CommandId(Guid.NewGuid());
        var (command, text) = Confirm(waiting, "Looked at it");
        var proof = await tablet.ProveAsync(DemoPeople.Lead, id, Shown);
        var first = await Cars.SignAsync(car, proof, id, Shown, command, [text]);

        var again = await Cars.SignAsync(car, proof, id, Shown, command, [NewContent.Of("Looked at it"u8)]);
        var later = await ConfirmAsync(DemoPeople.Lead, waiting, "Looked at it");

        Assert.True(again.Repeated);
        Assert.Equal(first.Entries[0].Number, Assert.Single(again.Entries).Number);
        Assert.Equal(2, Cars.Read(car, null).State.Corrections.Values.Count(correction => correction.Fact.Target == Cars.Read(car, null).State.Corrections[waiting].Fact.Target));
        Assert.Equal([HoldReason.NoSuchCorrection], later.Reasons.Select(reason => reason.Reason));
    }

    [Fact]
    public async Task A_signature_for_another_screen_confirms_nothing()
    {
        var waiting = await WaitingAsync(Nut(5));
        var id = new CommandId(Guid.NewGuid());
        var (command, text) = Confirm(waiting, "Looked at it");
        var proof = await tablet.ProveAsync(DemoPeople.Lead, id, new ShownLines("SIGN: by me", "Another correction", []));

        var answer = await Cars.SignAsync(car, proof, id, Shown, command, [text]);

        Assert.Contains("another screen", answer.NotSaved, StringComparison.Ordinal);
        Assert.False(Counts(Nut(5)));
    }

    [Fact]
    public async Task Doer_and_corrector_are_not_offered_to_sign()
    {
        var waiting = await WaitingAsync(new JointPosition("wheel.nut", "front-left", 1));
        var state = Cars.Read(car, null).State;

        var notBy = CorrectionUse.NotBy(state, state.Corrections[waiting]);

        Assert.Contains(await IdAsync(DemoPeople.Chassis), notBy);
        Assert.DoesNotContain(await IdAsync(DemoPeople.Lead), notBy);
        Assert.Equal(notBy, CorrectionUse.NotBy(state, Entry(waiting)));
    }

    private static JointPosition Nut(int number) => new("wheel.nut", "rear-right", number);

    private bool Counts(JointPosition nut)
    {
        var state = Cars.Read(car, null).State;
        return state.IsAtTorque(state.Of(nut));
    }

    private Recorded Entry(long number) => shop.Services.GetRequiredService<CarEntries>().Find(car, number)!;

    private Task<PersonId> IdAsync(DemoPeople.DemoPerson person) =>
        shop.RowsAsync(rows => rows.People.Where(row => row.Name == person.Name).Select(row => row.Id).SingleAsync());

    /// <summary>Restates the nut's final pull too low and then right again; the second correction's number.</summary>
    private async Task<long> WaitingAsync(JointPosition nut, DemoPeople.DemoPerson? by = null)
    {
        var pull = Cars.Read(car, null).State.Of(nut).Last!.Number;
        await RestateAsync(by ?? DemoPeople.Chassis, pull, 100);
        var correction = await RestateAsync(by ?? DemoPeople.Chassis, pull, 110);
        Assert.False(Counts(nut));
        return correction;
    }

    private async Task<long> RestateAsync(DemoPeople.DemoPerson by, long pull, decimal newtonMetres)
    {
        var text = NewContent.Of("typed wrong"u8);
        var answer = await SignAsync(by, new Restate(pull, new EnteredTorque(newtonMetres, TorqueUnit.NewtonMetre), text.Digest, Shown.Hex), text);
        Assert.True(answer.Recorded);
        return answer.Entries[0].Number;
    }

    private Task<DeskAnswer> ConfirmAsync(DemoPeople.DemoPerson signer, long correction, string reason)
    {
        var (command, text) = Confirm(correction, reason);
        return SignAsync(signer, command, text);
    }

    private (ConfirmCorrection Command, NewContent Reason) Confirm(long correction, string reason)
    {
        var text = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        var reading = Cars.Read(car, null);
        return (reading.State.AsShown(reading.Now, new ConfirmCorrection(correction, text.Digest, Shown.Hex)), text);
    }

    private async Task<DeskAnswer> SignAsync(DemoPeople.DemoPerson signer, SignedCommand command, NewContent text)
    {
        var id = new CommandId(Guid.NewGuid());
        var reading = Cars.Read(car, null);
        return await Cars.SignAsync(
            car, await tablet.ProveAsync(signer, id, Shown), id, Shown, reading.State.AsShown(reading.Now, command), [text]);
    }
}
