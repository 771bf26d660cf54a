using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ReleaseCommand = ShopJobs.Domain.Logbook.Release;

namespace ShopJobs.Web.Tests.Signing;

/// <summary>The desk compares proof, lines and command with each other; nothing is compared with itself.</summary>
public sealed class SigningDeskTests : DialogBench
{
    private static readonly ShownLines Lines = new("SIGN: by me", "Blue: step", ["110 N·m on all five"]);

    [Fact]
    public async Task A_proof_for_another_command_signs_nothing()
    {
        var answer = await SignAsync(new CommandId(Guid.NewGuid()), new CommandId(Guid.NewGuid()), Lines, Lines, Lines.Hex);

        Assert.Contains("another screen", answer.NotSaved, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lines_that_were_not_shown_sign_nothing()
    {
        var id = new CommandId(Guid.NewGuid());

        var answer = await SignAsync(id, id, Lines, new ShownLines("SIGN: by me", "Blue: step", ["199 N·m on all five"]), Lines.Hex);

        Assert.Contains("another screen", answer.NotSaved, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_command_made_from_other_lines_signs_nothing()
    {
        var id = new CommandId(Guid.NewGuid());

        var answer = await SignAsync(id, id, Lines, Lines, new ShownLines("SIGN: by me", "Blue: step", ["199 N·m on all five"]).Hex);

        Assert.Contains("another screen", answer.NotSaved, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_shown_is_kept_beside_the_entry_word_for_word()
    {
        var id = new CommandId(Guid.NewGuid());

        var answer = await SignAsync(id, id, Lines, Lines, Lines.Hex);

        Assert.True(answer.Recorded, answer.NotSaved ?? string.Join("; ", answer.Reasons.Select(reason => reason.Words)));
        var entries = Services.GetRequiredService<CarEntries>();
        var entry = (StepConfirmed)entries.Find(Car, answer.Entries[0].Number)!.Entry;
        var kept = ShownLines.Read(entries.Texts([entry.ShownAs!.Value])[entry.ShownAs.Value])!;
        Assert.Equal((Lines.Meaning, Lines.Title, entry.Shown), (kept.Meaning, kept.Title, kept.Hex));
        Assert.Equal(Lines.Lines, kept.Lines);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_release_is_neither_upheld_nor_withdrawn_on_an_older_page(bool uphold)
    {
        await DoneAsync();
        await ElsewhereAsync(DemoPeople.Lead, new ReleaseCommand(ReleaseKind.Road, 48_210, null, "") { Closing = ClosingCheck.All });
        var reading = Services.GetRequiredService<CarDesk>().Read(Car, await IdAsync(DemoPeople.Lead));
        SignedCommand drawn = uphold
            ? reading.State.AsShown(reading.Now, new UpholdRelease(ReleaseKind.Road, Lines.Hex))
            : reading.State.AsShown(reading.Now, new WithdrawRelease(ReleaseKind.Road, false, ContentDigest.Of([1], "wrong car"u8), Lines.Hex));
        await ElsewhereAsync(DemoPeople.Engines, new HoldPositions([Nuts[0]], ContentDigest.Of([1], "knocks"u8)));

        var id = new CommandId(Guid.NewGuid());
        var proof = await Signing.ProveAsync(await IdAsync(DemoPeople.Lead), DemoPeople.Lead.Pin, id, Lines);
        var answer = await Services.GetRequiredService<CarDesk>().SignAsync(Car, proof, id, Lines, drawn);

        Assert.Equal(HoldReason.LookAgain, Assert.Single(answer.Reasons).Reason);
        Assert.StartsWith("wheel nut front-left 1 was held at", answer.Reasons[0].Words, StringComparison.Ordinal);
    }

    private TabletSigning Signing => new(Services, Seed.Tablet);

    private async Task<DeskAnswer> SignAsync(CommandId proved, CommandId asked, ShownLines shown, ShownLines given, string named)
    {
        await ElsewhereAsync(DemoPeople.Chassis, new OpenPositions(Nuts, Job, null));
        var reading = Services.GetRequiredService<CarDesk>().Read(Car, null);
        var command = reading.State.AsShown(
            reading.Now, Sign("faces", ["faces-bare", "cones-bare", "threads-dry", "hub-ring"])) with
        { Shown = named };
        var proof = await Signing.ProveAsync(await IdAsync(DemoPeople.Chassis), DemoPeople.Chassis.Pin, proved, shown);
        return await Services.GetRequiredService<CarDesk>().SignAsync(Car, proof, asked, given, command);
    }
}
