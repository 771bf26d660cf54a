using System.Text.RegularExpressions;
using ShopJobs.Tests.Shared;

namespace ShopJobs.Browser.Tests;

/// <summary>
/// Every part of a screen that can refuse something is named here with the test that presses it in a browser and looks whether the refusal is
/// seen; a new one that nobody presses fails.
/// </summary>
public sealed partial class EveryFormPressedTests
{
    private const string Forms = "RefusalsSeenTests.cs";

    // The part, the file of the test that presses it, and what it presses or reads there.
    private static readonly (string Part, string File, string Presses)[] Pressed =
    [
        ("AsFoundCard", "IntakeTests.cs", "Nothing is filled in."),
        ("BenchFieldView", "BenchTests.cs", "#bench-least-wrong"),
        ("CalibrationPage", Forms, "Save"),
        ("CarPage", Forms, "Save the car"),
        ("CardHead", "JobCardTests.cs", "Say whose work it is."),
        ("CardWorkStage", "JobCardTests.cs", "a card's setting in letters"),
        ("Checklist", Forms, "#p-height"),
        ("ClosingFields", Forms, "RELEASE TO ROAD"),
        ("ComeInForm", Forms, "BRING IT IN"),
        ("CorrectBox", Forms, "VOID ENTRY"),
        ("CountForm", Forms, "RECORD MORE"),
        ("CustomerPage", Forms, "Save the customer"),
        ("DecideForm", Forms, "DECIDE"),
        ("EnterCardPage", "JobCardTests.cs", "No card of this job has this number"),
        ("EnrolPage", Forms, "Enrol this tablet"),
        ("FewerPanel", "FourStudCarTests.cs", "fewer joints without a finding"),
        ("FollowForm", Forms, "SIGN: IT FOLLOWS THIS"),
        ("GiveRight", Forms, "Add"),
        ("HandTightLimit", Forms, "KEEP"),
        ("HeldRowPage", Forms, "/held\""),
        ("ImportColumns", Forms, "Look again"),
        ("InstrumentPage", Forms, "ENTER THE CHECK"),
        ("InstrumentsPage", Forms, "Add it"),
        ("LeavePanel", Forms, "LET IT GO"),
        ("LockCurtain", Forms, "#lock-refusal"),
        ("LookOverPanel", Forms, "SIGN: LOOKED OVER"),
        ("MovePanel", Forms, "MOVE IT"),
        ("NewPersonPage", Forms, "Add and make a PIN"),
        ("OptionFormPage", Forms, "Save the option"),
        ("OwnPinPage", Forms, "Take a new PIN"),
        ("PartFields", Forms, "Save the part"),
        ("PartImportPage", Forms, "Look at the file"),
        ("PersonPage", Forms, "Rename"),
        ("PhotoForm", "PhotosTests.cs", "That is no photograph"),
        ("PlacePage", Forms, "Save the place"),
        ("PutAway", "KeptNamesTests.cs", "#away-wrong"),
        ("ReTorqueJoint", Forms, "NOT MOVED"),
        ("ReadForm", "CustomerReadsTests.cs", "too many words of a customer"),
        ("ReasonDialog", Forms, "#reason-wrong"),
        ("ReleaseCard", Forms, "RELEASE TO A ROAD TEST"),
        ("RemarkList", Forms, "ANSWER"),
        ("ResultForm", Forms, "RECORD "),
        ("RetirePlace", "PlacesTests.cs", "#retire-wrong"),
        ("RoadTestBack", "BrakesByHandTests.cs", "#back-km-wrong"),
        ("RunDownPanel", "ProcedureHands.cs", "#run-down-wrong"),
        ("SignDialog", Forms, "#sign-pin"),
        ("SignInPage", Forms, "Sign in"),
        ("StackFormPage", Forms, "Save the wheel stack"),
        ("StartJobPanel", Forms, "Start a job"),
        ("StartPage", Forms, "Start an empty shop"),
        ("TakeBackForm", Forms, "TAKE IT BACK"),
        ("ThreadPanel", Forms, "ON THE THREAD"),
        ("ToolFormPage", Forms, "Save"),
        ("UploadPage", Forms, "Take it in"),
        ("WarrantyChoice", Forms, "Pick the joints the case is about"),
    ];

    // Where nothing is typed or picked: a button, and at most a name to touch. What it refuses stands beside it.
    private static readonly Dictionary<string, string> NothingToType = new()
    {
        ["AssignPanel"] = "people are touched; refused only when the job has ended meanwhile",
        ["BenchUnitPicker"] = "a unit is picked from a list; refused only when an address was typed by hand",
        ["CardAnswers"] = "shows what became of a card that was entered",
        ["ChosenOption"] = "shows that a choice does not hold any more",
        ["ConfirmPerson"] = "one button, which opens the signature",
        ["CustomerDataPage"] = "one button, dead with its reasons beside it while it would be refused",
        ["RetirePanel"] = "one button, asked once more",
        ["RetirePart"] = "one button, asked once more; refused only when somebody changed the part meanwhile",
        ["RevisionPage"] = "one button, which opens the signature",
        ["StepWrongPanel"] = "buttons; words are optional",
        ["TopBar"] = "signs out",
    };

    // Fields that other parts are made of: pressed with them.
    private static readonly string[] Fields =
        ["AcceptanceFields", "FormField", "OdometerField", "PlaceChoice", "ReasonForm", "RefusedHere", "StatedInput", "TextField", "VisitText"];

    [Fact]
    public void Every_part_that_can_refuse_is_pressed_in_a_browser()
    {
        var parts = Components().GetFiles("*.razor", SearchOption.AllDirectories)
            .Where(file => CanRefuse().IsMatch(File.ReadAllText(file.FullName)))
            .Select(file => Path.GetFileNameWithoutExtension(file.Name))
            .Order(StringComparer.Ordinal);

        Assert.Equal(Pressed.Select(one => one.Part).Concat(NothingToType.Keys).Concat(Fields).Order(StringComparer.Ordinal), parts);
    }

    [Fact]
    public void The_test_named_presses_it()
    {
        var tests = Tests().GetFiles("*.cs", SearchOption.AllDirectories).Where(file => file.Name != $"{nameof(EveryFormPressedTests)}.cs")
            .ToLookup(file => file.Name, file => File.ReadAllText(file.FullName), StringComparer.Ordinal);

        Assert.All(Pressed, one => Assert.Contains(one.Presses, Assert.Single(tests[one.File]), StringComparison.Ordinal));
    }

    private static DirectoryInfo Components() => new(Path.Combine(WorkSeed.Folder.Parent!.FullName, "src", "ShopJobs.Web", "Components"));

    private static DirectoryInfo Tests() => new(Path.Combine(WorkSeed.Folder.Parent!.FullName, "tests", "ShopJobs.Browser.Tests"));

    [GeneratedRegex("<form|<EditForm|form-wrong|door-refusal|<RefusedHere")]
    private static partial Regex CanRefuse();
}
