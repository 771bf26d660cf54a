using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.HeldWorks;

/// <summary>What hardware the nut's place had last.</summary>
internal enum Fitted
{
    FromTheLot,
    FromAnother,
}

/// <summary>What is known of the lot.</summary>
internal enum LotIs
{
    Free,
    Held,
    Refused,
}

/// <summary>How far the lot's hold has come on the nut.</summary>
internal enum NutHold
{
    None,
    Waits,
    ToReplace,
}

/// <summary>
/// A car with a wheel nut from a lot, a signed step and a result, each of which Ann may stop. Zoe does the work, Bob decides.
/// </summary>
/// <param name="Off">The nut is off; the same hardware may go on again where no new one is asked.</param>
/// <param name="Granted">What was asked last was granted.</param>
/// <param name="Goes">Nothing of these speaks against a release to road.</param>
internal readonly record struct StoppedWork(
    bool Signed, bool StepHeld, bool Result, bool ResultHeld, Fitted Nut, bool Off, LotIs Lot, NutHold NutHold, bool Granted, bool Goes)
{
    public static readonly People[] Deciders = [People.Ann, People.Bob];

    public static readonly StoppedWork Start = new(true, false, true, false, Fitted.FromTheLot, false, LotIs.Free, NutHold.None, true, true);

    public StoppedWork Sign() => StepHeld ? Refused() : (this with { Signed = true }).Judged();

    public StoppedWork Decide(People by, Func<StoppedWork, StoppedWork> decision) => by == People.Ann ? Refused() : decision(this).Judged();

    public StoppedWork HoldLot() => (this with { Lot = LotIs.Held, NutHold = Nut == Fitted.FromTheLot ? NutHold.Waits : NutHold }).Judged();

    public StoppedWork Replace() => this with
    {
        Lot = LotIs.Refused,
        NutHold = NutHold == NutHold.Waits && !Off ? NutHold.ToReplace : NutHold.None,
    };

    // An opening carries out what was decided, and clears nothing that was not.
    public StoppedWork Open() => (this with
    {
        Off = true,
        Signed = false,
        NutHold = NutHold == NutHold.ToReplace ? NutHold.None : NutHold,
    }).Judged();

    public StoppedWork FitFromTheLot() => Lot == LotIs.Free ? Fit(Fitted.FromTheLot) : Refused();

    public StoppedWork Fit(Fitted hardware) => (this with { Nut = hardware, Off = false, Signed = true }).Judged();

    public StoppedWork Refused() => this with { Granted = false };

    public StoppedWork Judged() => this with
    {
        Granted = true,
        Goes = Signed && !StepHeld && Result && !ResultHeld && !Off && NutHold == NutHold.None,
    };
}
