namespace ShopJobs.Domain.Tests.Specification.Conditions;

/// <summary>What the rules ask of the car's condition, each in its own words.</summary>
internal static class ConditionRequirements
{
    private const string PerPlace = "The car's condition is declared per aspect and, where the register says so, per place.";
    private const string Ends = "It ends at a release, at an opening it depends on, and at its age.";
    private const string Leaves = "What is said of a car in the shop ends when it leaves.";

    public static Sheet<ConditionState> WithRequirements(this Sheet<ConditionState> sheet) => sheet
        .Must("OWN-PLACE", PerPlace, (b, a) => IsMade(b.Left, a.Left) || IsMade(b.Right, a.Right),
            (b, a) => ConditionActions.Corners.All(corner => !IsMade(b[corner], a[corner]) || b[corner].Wheel == Wheel.Up))
        .Must("WHOLE-CAR", PerPlace, (b, a) => IsMade(b.Left, a.Left) || IsMade(b.Right, a.Right), (b, _) => b.Cold)
        .MustOn("WheelUp", "SAID-OF-ONE-PLACE", PerPlace, (_, _) => true, (b, a) => b.Left == a.Left || b.Right == a.Right)
        .MustOn("Release", "ENDS-AT-RELEASE", Ends, (_, _) => true, (_, a) => a is { Cold: false, Left.Wheel: Wheel.NotSaid, Right.Wheel: Wheel.NotSaid })
        .MustOn("LeaveAndReturn", "ENDS-AT-LEAVING", Leaves, (_, _) => true, (_, a) => a is { Cold: false, Left.Wheel: Wheel.NotSaid, Right.Wheel: Wheel.NotSaid })
        .MustOn("AgePasses", "ENDS-AT-ITS-AGE", Ends, (_, _) => true, (_, a) => a is { Cold: false, Left.Wheel: Wheel.NotSaid, Right.Wheel: Wheel.NotSaid })
        .MustOn("Open", "ENDS-AT-OPENING", Ends, (b, a) => b.Right == a.Right && b.Left.Nut != Nut.Open && b.Left != a.Left, (_, a) => a.Left.Wheel == Wheel.NotSaid || a.Right.Wheel == Wheel.NotSaid)
        .MustOn("Open", "OTHERS-STAND", Ends, (b, _) => b.Left.Wheel == Wheel.Up && b.Right.Wheel == Wheel.Up, (b, a) => (b.Left == a.Left || b.Right == a.Right) && b.Cold == a.Cold)
        .Must("KEEPS-THE-NUMBER", "A record keeps the number of the declaration it rested on.",
            (b, a) => IsMade(b.Left, a.Left) || IsMade(b.Right, a.Right),
            (b, a) => ConditionActions.Corners.All(corner => !IsMade(b[corner], a[corner]) || a[corner].Keeps == Keeps.Standing))
        .MustOn("WheelDown", "RECORDS-STAND", "A record keeps the number of the declaration it rested on.",
            (b, _) => b.Left.Nut == Nut.Good, (_, a) => a.Left is { Nut: Nut.Good, Keeps: not Keeps.Nothing });

    private static bool IsMade(Place b, Place a) => b.Nut != Nut.Good && a.Nut == Nut.Good;
}
