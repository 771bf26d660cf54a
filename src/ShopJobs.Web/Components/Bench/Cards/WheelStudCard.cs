using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>Whether a wheel stud is long enough, and not too long for a closed nut.</summary>
public sealed class WheelStudCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly LengthField stud = new("stud", "Stud, from the seat of its head to its end") { Example = "50", Hint = "Without the chamfer." };
    private readonly LengthField flange = new("flange", "Hub flange") { Example = "9" };
    private readonly LengthField hat = new("hat", "Disc hat") { Example = "7", MayBeZero = true };
    private readonly LengthField spacer = new("spacer", "Spacer") { Example = "0", MayBeZero = true };
    private readonly LengthField pad = new("pad", "Wheel, from its inner face to where the nut's thread begins") { Example = "15" };
    private readonly LengthField washer = new("washer", "Loose washer") { Example = "0", MayBeZero = true };
    private readonly LengthField nutThread = new("nut-thread", "Full thread in the nut") { Example = "14" };
    private readonly ChoiceField<bool> nut = new("nut", "The nut is", [new("open", "open", false), new("closed", "closed", true)]) { Example = "open" };
    private readonly LengthField depth;

    public WheelStudCard() => depth = new("depth", "Closed nut: from where its thread begins to its bottom")
    {
        Example = "25",
        IsAsked = IsClosed,
    };

    /// <inheritdoc/>
    public override string Key => "wheel-stud";

    /// <inheritdoc/>
    public override string Question => "Does this wheel stud fit?";

    /// <inheritdoc/>
    public override string Use => "What lies on the stud, how much thread the nut gets, and whether a closed nut bottoms.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, stud, flange, hat, spacer, pad, washer, nutThread, nut, depth];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["reaches into the nut = stud − flange − hat − spacer − wheel − washer", "engaged = the smaller of that and the nut's thread", "turns = engaged/P"],
        [new("P", "pitch, mm"), new("all others", "lengths along the stud, mm")],
        "Own arithmetic; one diameter engaged in steel and two threads through an open nut: US Army TB 43-0218, paragraph 7.",
        "Steel studs and nuts. The rules of a race series or of the wheel's maker may ask for more, and win.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var units = inputs.Units;
        var stack = new WheelStudStack
        {
            Thread = thread.Read(inputs),
            Stud = stud.Read(inputs),
            HubFlange = flange.Read(inputs),
            DiscHat = hat.Read(inputs),
            Spacer = spacer.Read(inputs),
            WheelPad = pad.Read(inputs),
            Washer = washer.Read(inputs),
            NutThread = nutThread.Read(inputs),
            ClosedNutDepth = IsClosed(inputs) ? depth.Read(inputs) : null,
        };
        var fit = WheelStudFit.Of(stack);
        var engaged = $"{units.Say(stack.Engaged)} engaged, {FormattableString.Invariant($"{stack.Turns:0.0}")} turns";
        var verdict = fit.Fits ? "It fits" : "It does not fit";
        return new BenchAnswer(verdict, $"{verdict}: {engaged}.")
        {
            Pictures = [new StackPicture(stack)],
            Lines =
            [
                new("Reaches into the nut", stack.Available.Millimeters < 0 ? $"not at all, {units.Say(-stack.Available)} short" : units.Say(stack.Available)),
                new("Engaged", units.Say(stack.Engaged), $"at least one diameter, {units.Say(stack.Thread.NominalDiameter * WheelStudFit.LeastDiameters)}, is needed"),
                stack.RoomInClosedNut is { } room
                    ? new("Room left in the closed nut", room.Millimeters < 0 ? $"none, {units.Say(-room)} too long" : units.Say(room), "none means that it bottoms")
                    : new("Shows beyond the nut", units.Say(stack.Showing), $"two threads, {units.Say(stack.Thread.Pitch * WheelStudFit.ThreadsShowing)}, are needed"),
            ],
            Cautions = fit.Problems,
        };
    }

    private bool IsClosed(BenchInputs inputs) => nut.ProblemOf(inputs) is null && nut.Read(inputs);
}
