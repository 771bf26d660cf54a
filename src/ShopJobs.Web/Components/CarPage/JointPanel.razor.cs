using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>One joint of one car. OPEN is one tap; what it does is written beside it before.</summary>
public sealed partial class JointPanel
{
    private readonly HashSet<JointPosition> only = [];
    private List<(JointPosition Position, JointLook Look)> positions = [];
    private OpeningConsequences? consequences;
    private string? specification;
    private EntryNames entryNames = default!;
    private string why = "";
    private bool sure;
    private bool busy;

    [Parameter, EditorRequired]
    public CarReading Reading { get; set; } = default!;

    [Parameter, EditorRequired]
    public Joint Joint { get; set; }

    /// <summary>Every joint of the car, for the picture that shows where this one is.</summary>
    [Parameter]
    public IReadOnlyList<JointSeen> Joints { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<JointLine> History { get; set; } = [];

    /// <summary>Reasons and findings by digest.</summary>
    [Parameter]
    public IReadOnlyDictionary<ContentDigest, string> Texts { get; set; } = new Dictionary<ContentDigest, string>();

    [Parameter]
    public IReadOnlyDictionary<PersonId, string> Names { get; set; } = new Dictionary<PersonId, string>();

    [Parameter]
    public EventCallback<(IReadOnlyList<JointPosition> Positions, string Why)> OnOpen { get; set; }

    /// <summary>What a tap on OPEN opens: the chosen fasteners, or all that are not open.</summary>
    private List<JointPosition> ToOpen => only.Count > 0
        ? [.. only.OrderBy(position => position.Number)]
        : [.. positions.Where(row => row.Look.State != PositionState.Open).Select(row => row.Position)];

    // The job whose steps close it: one that rests only where no other does.
    private JobBook? Closer => Reading.State.RunningJobs.Where(job => Reading.Placed(job).Groups.Any(group => group.Joint == Joint))
        .OrderBy(job => job.OnHold is not null).FirstOrDefault();

    private bool MayOpen => ToOpen.Count > 0;

    /// <summary>The opening of this joint that can be taken back as never done; null where there is none.</summary>
    private long? TakeBack => positions.Select(row => Reading.State.Of(row.Position).OpenedBy).Distinct()
        .Where(Reading.State.CanBeTakenBack).Cast<long?>().FirstOrDefault();

    private string OpenWords => consequences!.Opened.Positions is var opened && opened.Count(position => position.Joint == Joint) == positions.Count
        ? Reading.Now.Name(Joint)
        : entryNames.Positions(opened);

    protected override void OnParametersSet()
    {
        // What was worked on is drawn, also where a newer register counts fewer.
        var count = Reading.State.Positions.Keys.Where(position => position.Joint == Joint).Select(position => position.Number)
            .Append(Reading.Now.Register.Kinds.GetValueOrDefault(Joint.Key)?.PositionsAt(Joint.Place) ?? 0).Max();
        positions = [.. Enumerable.Range(1, count).Select(Joint.At).Select(position => (position, JointLook.Of(Reading, position)))];
        specification = Opening.GroupOn(Reading.State, Reading.Now, Joint.At(1)) is { Group: var group }
            ? $"{group.Thread}, {group.Condition.Words()}, {(group.IsTurned ? group.StageWords() : $"permitted {group.Final.Permitted}")}, {group.Risk.Words()}"
            : null;
        entryNames = JointLineWords.NamesOf(Reading, Names);
        Foresee();
    }

    private void Toggle(JointPosition position)
    {
        if (!only.Remove(position))
        {
            only.Add(position);
        }

        sure = false;
        Foresee();
    }

    private void Foresee() => consequences = MayOpen ? OpeningConsequences.Of(Reading.State, Reading.Now, ToOpen) : null;

    private async Task OpenAsync()
    {
        if (busy)
        {
            return;
        }

        if (!sure && OpeningWords.Falls(Reading.State, Reading.Now, consequences!).Count > 0)
        {
            sure = true;
            return;
        }

        busy = true;
        await OnOpen.InvokeAsync((ToOpen, Typed.Clean(why)));
        (busy, sure, why) = (false, false, "");
        only.Clear();
        Foresee();
    }
}
