using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.PeopleAndPlaces;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class SignatureDeskTests : IAsyncLifetime
{
    private static readonly CommandId Command = new(Guid.Parse("5a000000-0000-4000-8000-000000000001"));
    private static readonly byte[] Shown = ShownDigest.Of("SIGN: done by me", ["Blue, G1 top nuts", "24 N.m"]);
    private ShopOnDisk shop = default!;

    public async Task InitializeAsync() => shop = await ShopOnDisk.OpenAsync();

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task Right_pin_makes_a_proof_for_this_command_and_this_screen_only()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);

        var proof = await SignedAsync(signer, DemoPeople.Chassis.Pin);

        var now = shop.Time.GetUtcNow().UtcDateTime;
        Assert.Equal((signer, "Jorn", shop.Tablet), (proof.Signer, proof.NameAtSigning, proof.Tablet));
        Assert.True(proof.Covers(Command, Shown, now));
        Assert.False(proof.Covers(new CommandId(Guid.NewGuid()), Shown, now));
        Assert.False(proof.Covers(Command, ShownDigest.Of("SIGN: done by me", ["Blue, G1 top nuts", "25 N.m"]), now));
        Assert.False(proof.Covers(Command, Shown, now.AddMinutes(3)));
    }

    [Fact]
    public async Task Digest_of_a_proof_cannot_be_changed_from_outside()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);
        var proof = await SignedAsync(signer, DemoPeople.Chassis.Pin);

        proof.Digest[0] ^= 0xFF;

        Assert.Equal(Shown, proof.Digest);
    }

    [Fact]
    public async Task Witness_signs_at_the_doers_tablet_and_both_are_kept()
    {
        var doer = await shop.SignInAsync(DemoPeople.Chassis);
        var witness = await shop.IdOfAsync(DemoPeople.Engines.Name);

        var proof = await SignedAsync(witness, DemoPeople.Engines.Pin);

        Assert.Equal((witness, doer), (proof.Signer, proof.SessionPerson));
    }

    [Fact]
    public async Task Another_persons_pin_signs_nothing()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);

        Assert.Contains("not the PIN of Jorn", await RefusedAsync(signer, DemoPeople.Engines.Pin), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("58204")]
    [InlineData("582046 ")]
    public async Task What_is_no_pin_signs_nothing(string? pin)
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);

        Assert.NotEqual("", await RefusedAsync(signer, pin));
    }

    [Fact]
    public async Task Five_wrong_pins_in_a_session_end_it()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);
        for (var i = 0; i < PinDelay.EndsSession; i++)
        {
            await RefusedAsync(signer, "111111");
            shop.Time.Advance(TimeSpan.FromMinutes(1));
        }

        Assert.Contains("locked", await RefusedAsync(signer, DemoPeople.Chassis.Pin), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_pins_at_another_door_do_not_stop_signing_here()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);
        for (var i = 0; i < 6; i++)
        {
            await shop.Get<PinCheck>().AtTheDoorAsync(signer, "111111", at: null);
        }

        Assert.Equal(signer, (await SignedAsync(signer, DemoPeople.Chassis.Pin)).Signer);
    }

    [Fact]
    public async Task Nobody_signs_at_a_tablet_that_locked_itself()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);
        shop.Time.Advance(TimeSpan.FromMinutes(16));

        Assert.Contains("locked", await RefusedAsync(signer, DemoPeople.Chassis.Pin), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_signs_after_leaving()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var leaver = await shop.IdOfAsync(DemoPeople.Engines.Name);
        Assert.Null(await shop.Get<PeopleDesk>().SetActiveAsync(leaver, active: false));

        Assert.NotEqual("", await RefusedAsync(leaver, DemoPeople.Engines.Pin));
    }

    [Fact]
    public async Task Signature_without_a_digest_is_a_bug()
    {
        var signer = await shop.SignInAsync(DemoPeople.Chassis);

        await Assert.ThrowsAsync<ArgumentException>(() => shop.Get<SignatureDesk>().VerifyAsync(signer, DemoPeople.Chassis.Pin, Command, []));
    }

    [Fact]
    public void Proof_has_no_public_way_to_be_made()
    {
        Assert.Empty(typeof(SignatureProof).GetConstructors());
        Assert.All(
            typeof(SignatureProof).GetConstructors(System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Instance),
            made => Assert.True(made.IsPrivate));
    }

    private async Task<SignatureProof> SignedAsync(PersonId signer, string pin)
    {
        var answer = await shop.Get<SignatureDesk>().VerifyAsync(signer, pin, Command, Shown);
        return Assert.IsType<SignatureAnswer.Signed>(answer).Proof;
    }

    private async Task<string> RefusedAsync(PersonId signer, string? pin)
    {
        var answer = await shop.Get<SignatureDesk>().VerifyAsync(signer, pin, Command, Shown);
        return Assert.IsType<SignatureAnswer.Refused>(answer).Words;
    }
}
