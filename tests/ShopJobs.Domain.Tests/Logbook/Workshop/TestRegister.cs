using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>A little joint register: two corners of wheels, a strut, a bar and a brake bolt. Invented.</summary>
internal static class TestRegister
{
    public const string Left = "front-left";
    public const string Right = "front-right";
    public const string Front = "front";

    public const string Stud = "wheel.stud";
    public const string Nut = "wheel.nut";
    public const string Jam = "wheel.jam-nuts";
    public const string StrutTop = "strut.top";
    public const string StrutClamp = "strut.clamp";
    public const string BarLink = "bar.link";
    public const string BrakeBolt = "brake.bolt";

    public static readonly CarCondition WheelUp = new("wheel", "up");
    public static readonly CarCondition WheelDown = new("wheel", "down");

    /// <summary>The register with so many studs and nuts at each wheel.</summary>
    public static JointRegister With(int nuts) => new(
        "Test register",
        DemoData: true,
        new[]
        {
            Kind(Stud, "wheel stud", Filling.Stud, nuts),
            Kind(Nut, "wheel nut", Filling.Nut, nuts) with { RidesOn = Stud },
            Kind(Jam, "jam nuts", Filling.Nut, nuts) with { RidesOn = Stud, Temporary = true },
            Kind(StrutTop, "strut top nut", Filling.Nut, 2) with
            {
                Undoes = [new(UndoneKind.Result, "alignment")],
                Least = new Dictionary<ReleaseKind, LeastState> { [ReleaseKind.Move] = LeastState.HandTight },
                LeastWhy = "waits for ride height",
            },
            Kind(StrutClamp, "strut clamp bolt", Filling.Bolt, 1) with
            {
                Undoes = [new(UndoneKind.Joint, StrutTop), new(UndoneKind.Setting, "front-bar")],
            },
            Kind(BarLink, "bar link", Filling.Nut, 1) with { Places = [Front], Undoes = [new(UndoneKind.Setting, "front-bar")] },
            Kind(BrakeBolt, "brake carrier bolt", Filling.Bolt, 1) with
            {
                Places = [Front],
                Least = new Dictionary<ReleaseKind, LeastState> { [ReleaseKind.Track] = LeastState.MadeHere },
            },
        }.ToDictionary(kind => kind.Key),
        new Dictionary<string, IReadOnlyList<string>> { ["wheel"] = ["up", "down"] },
        new Dictionary<string, IReadOnlyList<Undone>> { ["front-bar"] = [new(UndoneKind.Result, "corner-weights")] });

    private static JointKind Kind(string key, string name, Filling filling, int positions) => new(
        key, name, "wheels", [Left, Right], positions, filling, null, [], new Dictionary<ReleaseKind, LeastState>(), null, false);
}
