namespace ShopJobs.Domain.Tests.Specification.Conditions;

/// <summary>Courses that must come to an end, and defects that a requirement must catch.</summary>
internal static class ConditionCourses
{
    public static Sheet<ConditionState> WithCourses(this Sheet<ConditionState> sheet) => sheet
        .Honest("BOTH-CORNERS", "Two technicians at two corners, each with a wheel of his own", s => s.Left.Nut == Nut.Good && s.Right.Nut == Nut.Good)
        .Honest("ONE-UP-ONE-DOWN", "One wheel on the ground while the other is pulled", s => s.Left is { Nut: Nut.Good, Wheel: Wheel.Down } && s.Right is { Nut: Nut.Good, Wheel: Wheel.Up })
        .Honest("NEXT-JOB", "Said again in the next job, and pulled", s => s.Left is { Nut: Nut.Good, Keeps: Keeps.Standing } && s.Right is { Nut: Nut.Good, Keeps: Keeps.Earlier });

    public static Sheet<ConditionState> WithDefects(this Sheet<ConditionState> sheet) => sheet
        .Defect("hub held at one corner lets a nut at another count", "OWN-PLACE", "Pull",
            (b, a) => b.Left.Wheel == Wheel.Up && b.Cold && b.Right.Wheel != Wheel.Up && a.Right.Nut == Nut.Failed,
            (_, a) => a with { Right = a.Right with { Nut = Nut.Good, Keeps = Keeps.Standing } })
        .Defect("nobody said that the engine is cold", "WHOLE-CAR", "Pull",
            (b, a) => b is { Cold: false, Left.Wheel: Wheel.Up } && a.Left.Nut == Nut.Failed, (_, a) => a with { Left = a.Left with { Nut = Nut.Good, Keeps = Keeps.Standing } })
        .Defect("wheel up at one corner is wheel up at all", "SAID-OF-ONE-PLACE", "WheelUp",
            (_, _) => true, (_, a) => a.Each(place => place with { Wheel = Wheel.Up }))
        .Defect("engine cold lasts over a release", "ENDS-AT-RELEASE", "Release", (_, _) => true, (_, a) => a with { Cold = true })
        .Defect("the tyre still stands on the ground after a drive", "ENDS-AT-LEAVING", "LeaveAndReturn", (b, _) => b.Left.Wheel == Wheel.Down, (b, a) => a with { Left = a.Left with { Wheel = b.Left.Wheel } })
        .Defect("engine cold lasts thirty days", "ENDS-AT-ITS-AGE", "AgePasses", (b, _) => b.Cold, (_, a) => a with { Cold = true })
        .Defect("the wheel is off and still on the ground", "ENDS-AT-OPENING", "Open",
            (b, a) => b.Left.Wheel == Wheel.Down && a.Left.Wheel == Wheel.NotSaid && b.Right.Wheel == Wheel.Up && b.Right == a.Right, (b, a) => a with { Left = a.Left with { Wheel = b.Left.Wheel } })
        .Defect("opening one corner ends what was said of the other", "OTHERS-STAND", "Open",
            (b, a) => b.Left != a.Left, (_, a) => a with { Right = a.Right with { Wheel = Wheel.NotSaid } })
        .Defect("a pull keeps no number", "KEEPS-THE-NUMBER", "Pull", (_, a) => a.Left.Nut == Nut.Good, (_, a) => a with { Left = a.Left with { Keeps = Keeps.Nothing } })
        .Defect("letting the wheel down undoes the pull", "RECORDS-STAND", "WheelDown", (b, _) => b.Left.Nut == Nut.Good, (_, a) => a with { Left = a.Left with { Nut = Nut.HandTight, Keeps = Keeps.Nothing } });
}
