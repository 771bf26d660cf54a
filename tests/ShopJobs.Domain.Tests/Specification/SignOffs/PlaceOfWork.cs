namespace ShopJobs.Domain.Tests.Specification.SignOffs;

/// <summary>How the joint is.</summary>
internal enum Nut
{
    AsFound,
    Open,
    AtTorque,
}

/// <summary>What stands of a sign-off.</summary>
internal enum SignOff
{
    None,
    Stands,
    Void,
    ToConfirm,
}

/// <summary>What is asked to be signed: the step before the work, the work, the step that waits for it, the step that waits for the joint; and the road release.</summary>
internal enum Asked
{
    Nothing,
    Clean,
    Fit,
    Look,
    Dust,
    Road,
}

/// <summary>Whose opening it is.</summary>
internal enum Opener
{
    ThisJob,
    OtherJob,
}

/// <summary>
/// One joint at one place. A job cleans, fits and looks there, and has signed a step at another place; another job opens the
/// joint and does not close it.
/// </summary>
/// <param name="Voided">The pull that brought the joint to torque was voided.</param>
/// <param name="Begun">In this cycle something was opened, run down or pulled since the job's start.</param>
/// <param name="Off">The sign-off of the other job's step, which only opens the joint.</param>
/// <param name="Other">The sign-off of the job's step at the other place.</param>
/// <param name="Again">The procedure was put on the car a second time.</param>
/// <param name="Fell">A sign-off fell in this run.</param>
internal readonly record struct PlaceOfWork(
    Nut Nut, bool Voided, bool Begun, SignOff Clean, SignOff Fit, SignOff Look, SignOff Dust, SignOff Off, SignOff Other, bool Ended, bool Again,
    bool Released, bool Fell, Asked Asked, bool Granted)
{
    public static readonly PlaceOfWork Start = new() { Other = SignOff.Stands };

    public bool Counts => Nut == Nut.AtTorque && !Voided;

    public bool AllStand => (Clean, Fit, Look, Dust) is (SignOff.Stands, SignOff.Stands, SignOff.Stands, SignOff.Stands);

    public bool May(Asked asked) => asked switch
    {
        Asked.Clean => !Ended && Clean != SignOff.Stands,
        Asked.Fit => !Ended && Fit != SignOff.Stands && Clean == SignOff.Stands && Counts,
        Asked.Look => !Ended && Look != SignOff.Stands && Fit == SignOff.Stands,
        Asked.Dust => !Ended && Dust != SignOff.Stands && Counts,
        _ => Counts && (Ended || AllStand),
    };

    public PlaceOfWork Ask(Asked asked)
    {
        var told = this with { Asked = asked, Granted = May(asked) };
        return !told.Granted ? told : asked switch
        {
            Asked.Clean => told with { Clean = SignOff.Stands },
            Asked.Fit => told with { Fit = SignOff.Stands },
            Asked.Look => told with { Look = SignOff.Stands },
            Asked.Dust => told with { Dust = SignOff.Stands },
            _ => told with { Released = true, Ended = true },
        };
    }

    public PlaceOfWork Open() => Nut == Nut.Open ? Done() : Done().Fall(Begun && !Ended) with { Nut = Nut.Open, Voided = false, Begun = true, Released = false };

    public PlaceOfWork Pull() => Done() with { Nut = Nut.AtTorque, Begun = true };

    public PlaceOfWork Correct() => Done() with
    {
        Voided = true,
        Released = false,
        Ended = Ended && Fit != SignOff.Stands && Dust != SignOff.Stands,
        Fit = Fallen(Fit),
        Look = Asking(Look),
        Dust = Fallen(Dust),
        Fell = Fell || Fit == SignOff.Stands,
    };

    public PlaceOfWork SignOther() => Done() with { Off = SignOff.Stands };

    public PlaceOfWork StartAgain() => Start with { Nut = Nut, Again = true, Off = Off };

    private PlaceOfWork Done() => this with { Asked = Asked.Nothing, Granted = false };

    private PlaceOfWork Fall(bool falls) => !falls ? this : this with
    {
        Clean = Fallen(Clean),
        Fit = Fallen(Fit),
        Look = Asking(Look),
        Dust = Fallen(Dust),
        Fell = Fell || Clean == SignOff.Stands,
    };

    private static SignOff Fallen(SignOff of) => of == SignOff.None ? SignOff.None : SignOff.Void;

    private static SignOff Asking(SignOff of) => of == SignOff.None ? SignOff.None : SignOff.ToConfirm;
}
