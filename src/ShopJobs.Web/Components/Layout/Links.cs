using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Layout;

/// <summary>Addresses of pages that other pages lead to.</summary>
public static class Links
{
    public static string Car(CarId car) => $"/cars/{car.Value}";

    /// <summary>The car that a page is about, by its path; null where it is about none.</summary>
    public static CarId? CarOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Split('/', '?') is ["", "cars", var id, ..] && Guid.TryParse(id, out var car) ? new CarId(car) : null;
    }

    /// <summary>The car's logbook, at an entry where one is named.</summary>
    public static string Logbook(CarId car, long? entry = null) =>
        entry is { } number ? FormattableString.Invariant($"{Car(car)}/logbook?entry={number}") : $"{Car(car)}/logbook";

    /// <summary>The car's page with one joint open on it.</summary>
    public static string Joint(CarId car, Joint joint) =>
        $"{Car(car)}?joint={Uri.EscapeDataString(joint.Key)}&place={Uri.EscapeDataString(joint.Place)}#joint";

    public static string Step(CarId car, JobId job, string step) => $"{Car(car)}/jobs/{job.Value}/steps/{Uri.EscapeDataString(step)}";

    /// <summary>A job on paper.</summary>
    public static string Card(CarId car, JobId job) => $"{Car(car)}/jobs/{job.Value}/card";

    /// <summary>Where a card that was filled in by hand is entered; at one step where one is named.</summary>
    public static string EnterCard(CarId car, JobId job, string? step = null) =>
        step is null ? $"{Card(car, job)}/enter" : $"{Card(car, job)}/enter?step={Uri.EscapeDataString(step)}";

    /// <summary>What a newer revision of a job's procedure means for it, and where it is taken over.</summary>
    public static string Revision(CarId car, JobId job) => $"{Car(car)}/jobs/{job.Value}/revision";

    /// <summary>Options for a group of a job, side by side.</summary>
    public static string Options(CarId car, JobId job, string group) => $"{Car(car)}/jobs/{job.Value}/options/{Uri.EscapeDataString(group)}";

    /// <summary>Where a held position is decided.</summary>
    public static string Held(CarId car, JointPosition position) =>
        $"{Car(car)}/held/{Uri.EscapeDataString(position.Key)}/{Uri.EscapeDataString(position.Place)}/{position.Number}";

    /// <summary>Where several held fasteners of a car are decided at once; only those of a joint where one is named.</summary>
    public static string HeldRow(CarId car, Joint? joint = null) => joint is { } at
        ? $"{Car(car)}/held?joint={Uri.EscapeDataString(at.Key)}&place={Uri.EscapeDataString(at.Place)}"
        : $"{Car(car)}/held";

    /// <summary>Where everything that a tool in doubt tightened on a car is decided at once.</summary>
    public static string HeldByTool(CarId car, Domain.Tools.ToolId tool) => $"{Car(car)}/held?tool={tool.Value}";

    /// <summary>Where a held step, result or lot is decided.</summary>
    public static string HeldWork(CarId car, long hold) => FormattableString.Invariant($"{Car(car)}/held-work/{hold}");

    /// <summary>Which joints the car has, and where that is changed.</summary>
    public static string Joints(CarId car) => $"{Car(car)}/joints";

    /// <summary>Where the car comes in, is moved and leaves.</summary>
    public static string Visit(CarId car) => $"{Car(car)}/visit";

    /// <summary>How the car was found when it came in.</summary>
    public static string AsFound(CarId car) => $"{Car(car)}/as-found";

    /// <summary>The car's photographs, with one of them large where its entry is named.</summary>
    public static string Photos(CarId car, long? entry = null) =>
        entry is { } number ? FormattableString.Invariant($"{Car(car)}/photos?photo={number}#photo") : $"{Car(car)}/photos";

    /// <summary>A picture as it is kept.</summary>
    public static string Photo(ContentDigest digest) => $"/photos/{digest}";

    /// <summary>A picture, small.</summary>
    public static string SmallPhoto(ContentDigest digest) => $"/photos/{digest}/small";

    public static string Release(CarId car) => $"{Car(car)}/release";

    public static string Summary(CarId car) => $"{Car(car)}/summary";

    /// <summary>What was measured on the car, and what has to be measured.</summary>
    public static string Results(CarId car) => $"{Car(car)}/results";

    public static string ReTorque(CarId car) => $"{Car(car)}/re-torque";
}
