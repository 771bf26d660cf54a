using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.LogbookPages;

namespace ShopJobs.Web.Components.Step;

/// <summary>The newest thing a person recorded on this step that a correction may still name: what UNDO LAST undoes.</summary>
/// <param name="Unit">Unit of its value, which may be restated; null where it has none.</param>
public sealed record LastEntry(long Number, string Words, TorqueUnit? Unit = null)
{
    /// <summary>What to know before an angle is undone; null where it is none.</summary>
    public string? AboutTurn { get; init; }

    /// <summary>True for a pull: when it is voided, whether it was made all the same is asked.</summary>
    public bool IsPull { get; init; }

    /// <summary>What a signature covers that restates it, as it is shown.</summary>
    public Covering Covers { get; init; } = Covering.Nothing;

    /// <summary>The newest pull or hand-tight of this person on this step; null when there is none.</summary>
    public static LastEntry? Of(StepScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var joints = scene.Step.Work.Select(work => work.Instance.Joint).ToHashSet();
        var undone = scene.State.Corrections.Values.Where(one => one.Fact.Restated is null).Select(one => one.Fact.Target).ToHashSet();
        return scene.State.Correctables.All
            .Where(one => one.Value.Person == scene.Here.Person && !undone.Contains(one.Key) && !scene.State.Fallen.ContainsKey(one.Key))
            .OrderByDescending(one => one.Key)
            .Select(one => one.Value.Entry switch
            {
                TorqueRecorded pull when pull.Job == scene.Job.Id && joints.Contains(pull.Position.Joint) => new LastEntry(
                    one.Key, $"{scene.Reading.Now.Name(pull.Position)}, stage {pull.Stage.ToString(CultureInfo.InvariantCulture)}, {pull.Amount()}", pull.Value?.Unit)
                {
                    AboutTurn = CorrectionUse.AboutTurn(scene.State, pull),
                    IsPull = true,
                    Covers = CorrectionUse.Covers(scene.State, scene.Reading.Now, new Recorded(one.Key, one.Value.At, one.Value.Person, pull)),
                },
                HandTightened hand when hand.Job == scene.Job.Id && hand.Positions.Any(position => joints.Contains(position.Joint)) => new LastEntry(
                    one.Key, $"hand-tight: {string.Join(", ", hand.Positions.Select(scene.Reading.Now.Name))}"),
                _ => null,
            })
            .FirstOrDefault(found => found is not null);
    }
}
