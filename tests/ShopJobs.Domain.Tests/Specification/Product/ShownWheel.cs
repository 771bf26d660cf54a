using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Shown;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Real dialogs with others at work behind them: the command is made when the dialog is shown, and sent with the PIN.</summary>
internal sealed class ShownWheel : ProductCar
{
    private static readonly JointPosition Other = new(TestRegister.Nut, TestRegister.Right, 1);
    private Command shown = new DeclareCondition([]);

    public ShownWheel()
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), TestRegister.Left);
        Tighten();
    }

    public string? Take(Transition<OpenDialog> step)
    {
        switch (step.Action)
        {
            case "Show":
                Show(step.After.Dialog);
                return null;
            case "Meanwhile":
                Meanwhile(OpenDialog.Changes[step.ArgIndex]);
                return null;
            default:
                var person = step.Before.Dialog == Dialog.SignOff ? Zoe : Who(People.Bob);
                return Differ(("the PIN is taken", step.After.Signed != Dialog.None, Try(person, shown)));
        }
    }

    private void Show(Dialog dialog)
    {
        Settle();
        switch (dialog)
        {
            case Dialog.Witness:
                Finish();
                break;
            case Dialog.Decision:
                Car.Do(Who(People.Ann), new HoldPositions([Other], CarAtWork.Reason));
                break;
            case Dialog.Release:
                Finish();
                Car.Do(Who(People.Bob), CarWork.Looks(Job, "nuts", TestRegister.Left, 2));
                break;
        }

        shown = Car.Shows<SignedCommand>(dialog switch
        {
            Dialog.SignOff => CarWork.Sign(Job, $"seat@{TestRegister.Left}"),
            Dialog.Witness => CarWork.Looks(Job, "nuts", TestRegister.Left, 2),
            Dialog.Decision => CarWork.Decision(Other, Disposition.Rework),
            _ => CarWork.To(ReleaseKind.Move),
        });
    }

    private void Meanwhile(Since change)
    {
        switch (change)
        {
            case Since.PulledAgain:
                Tighten();
                if (shown is Witness or Release)
                {
                    Finish();
                }

                break;
            case Since.HeldToo:
                Car.Do(Who(People.Cy), new HoldPositions([Other], CarAtWork.Reason));
                break;
            case Since.Elsewhere:
                Car.Do(Zoe, new RecordResult("odometer", [new MeasuredValue("km", 1000, "km")], ResultBasis.LookedAt, null, [], null, null, CarAtWork.Shown));
                break;
        }
    }

    // What an earlier dialog left behind is put in order: nothing is held, the nut is at its first stage, unsigned.
    private void Settle()
    {
        if (IsHeld(Other))
        {
            Car.Do(Zoe, CarWork.Decision(Other, Disposition.Rework));
        }

        Tighten();
    }

    private void Tighten()
    {
        Car.Open(Zoe, Job, Nut);
        SignWhereAsked(Zoe, $"faces@{TestRegister.Left}", "clean");
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, Job, "nuts", Nut);
        Pull(Zoe, "nuts", Nut, 1, 50);
    }

    private void Finish()
    {
        SignWhereAsked(Zoe, $"seat@{TestRegister.Left}");
        Car.Declare(TestRegister.WheelDown);
        Pull(Zoe, "nuts", Nut, 2, 110);
    }
}
