using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Shown;

/// <summary>A signature covers what was on the screen and nothing else.</summary>
internal static class ShownRules
{
    private const string Covers =
        "A signature covers exactly the entries that were shown: the command names them, and where they are no longer exactly those it is refused with \"look again\"";

    public static RuleBook<OpenDialog> Book() => Faults(Courses(
        new RuleBook<OpenDialog>("What a signature covers", default, dialog => dialog.ToString())
            .Action("Show", OpenDialog.Kinds, (dialog, _) => dialog.Dialog == Dialog.None, (_, kind) => OpenDialog.Shown(kind))
            .Action("Meanwhile", OpenDialog.Changes, (dialog, change) => dialog.Dialog != Dialog.None && (dialog.Since & change) == 0, (dialog, change) => dialog.Meanwhile(change))
            .Action("PIN", dialog => dialog.Dialog != Dialog.None, dialog => dialog.Pin())
            .On("PIN", "10", "NOTHING-UNSHOWN", Covers,
                (before, _) => before.Moved, (_, after) => after is { Signed: Dialog.None, LookAgain: true })
            .On("PIN", "10", "AS-SHOWN-IS-SIGNED", "A signature covers exactly the entries that were shown",
                (before, _) => !before.Moved, (before, after) => after.Signed == before.Dialog)
            .On("PIN", "10", "FIGURES-AS-SHOWN", "A signature covers exactly the entries that were shown: the command names them",
                (_, after) => after.Signed == Dialog.SignOff, (_, after) => !after.Unshown)
            .On("PIN", "10", "SHOWN-IS-KEPT", "What was shown is kept",
                (_, after) => after.Signed != Dialog.None, (_, after) => after.Kept)));

    private static RuleBook<OpenDialog> Courses(RuleBook<OpenDialog> book) => book
        .Ends("10", "OTHERS-WORK-ON", "Work elsewhere on the car stops no witness", dialog => dialog.Signed == Dialog.Witness);

    private static RuleBook<OpenDialog> Faults(RuleBook<OpenDialog> book) => book
        .Fault("the witness signs a nut that was opened and pulled again behind the dialog", "NOTHING-UNSHOWN", "PIN",
            (before, _) => before is { Dialog: Dialog.Witness, Moved: true }, (before, _) => Signed(before))
        .Fault("use as is clears a HOLD that was pressed behind the dialog", "NOTHING-UNSHOWN", "PIN",
            (before, _) => before is { Dialog: Dialog.Decision, Moved: true }, (before, _) => Signed(before))
        .Fault("a release is given over what came in behind the dialog", "NOTHING-UNSHOWN", "PIN",
            (before, _) => before is { Dialog: Dialog.Release, Moved: true }, (before, _) => Signed(before))
        .Fault("a sign-off is given over a pull that came in behind the dialog", "NOTHING-UNSHOWN", "PIN",
            (before, _) => before is { Dialog: Dialog.SignOff, Moved: true }, (before, _) => Signed(before))
        .Fault("any entry on the car stops a witness", "AS-SHOWN-IS-SIGNED", "PIN",
            (before, _) => before is { Dialog: Dialog.Witness, Since: Since.Elsewhere }, (_, _) => new OpenDialog { LookAgain = true })
        .Fault("the draft is read again after the PIN: 9 turns were shown, 99 are signed", "FIGURES-AS-SHOWN", "PIN",
            (before, _) => before.Since == Since.TypedAnew, (_, dialog) => dialog with { Unshown = true })
        .Fault("of what was shown only a digest is left", "SHOWN-IS-KEPT", "PIN",
            (_, _) => true, (_, dialog) => dialog with { Kept = false });

    private static OpenDialog Signed(OpenDialog before) => new() { Signed = before.Dialog, Kept = true, Unshown = true };
}
