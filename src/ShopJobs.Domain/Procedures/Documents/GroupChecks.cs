using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Checks of one group beside the others.</summary>
internal sealed class GroupChecks(ProblemsFound problems, IReadOnlyList<GroupDraft> groups)
{
    public void Check(GroupDraft draft)
    {
        CheckTemporary(draft);
        CheckJam(draft);
        if (draft.Group is { Risk: RiskClass.A, Temporary: false, Final.Witness: false } group)
        {
            problems.Error(draft.Map.Map, $"Group “{group.Id}” is class A and nobody looks at its final stage", "write “witness: true” at the final stage");
        }
    }

    private void CheckTemporary(GroupDraft draft)
    {
        if (draft.Kind is { } kind && kind.Temporary != draft.Temporary)
        {
            problems.Error(
                draft.Map.At("temporary"),
                $"Group “{draft.Id}” is {(draft.Temporary ? "" : "not ")}temporary, its joint kind “{kind.Key}” is {(kind.Temporary ? "" : "not")}".TrimEnd(),
                "make both the same");
        }

        if (draft.Temporary && draft.Map.Has("within"))
        {
            problems.Error(draft.Map.At("within"), $"Group “{draft.Id}” is temporary and has a time limit", "write “within” at the group that stays on the car");
        }

        if (draft is { Temporary: true, Group: { } group } && (group.AsksWitness || group.ReTorque is { IsAsked: true }))
        {
            problems.Error(draft.Map.Map, $"Group “{draft.Id}” is temporary and asks for a witness or a re-torque", "delete that: it comes off before its step is signed");
        }
    }

    private void CheckJam(GroupDraft draft)
    {
        if (draft.JamGroup is not { } id)
        {
            return;
        }

        var at = draft.Map.At("jam");
        var pair = groups.FirstOrDefault(group => group.Id == id);
        if (pair is null)
        {
            problems.Error(at, $"There is no group “{id}” for the jam nuts", Wording.Nearest(id, [.. groups.Select(group => group.Id).OfType<string>()]));
            return;
        }

        if (!pair.Temporary)
        {
            problems.Error(at, $"The jam nuts' group “{id}” is not temporary", "write “temporary: true” there");
        }

        if (pair.Kind is { } nuts && draft.Kind is { } studs && (!studs.Places.All(nuts.Places.Contains) || nuts.Positions != studs.Positions))
        {
            problems.Error(at, $"“{nuts.Key}” and “{studs.Key}” differ in places or positions", "each stud has its own pair");
        }

        if (pair.Group is { } group && draft.Group?.Jam is { } jam
            && (group.Stages.Count != 1 || group.IsTurned || group.Final.Value.NewtonMetres != jam.JamTorque.NewtonMetres))
        {
            problems.Error(at, $"Here the nuts are jammed at {jam.JamTorque}, group “{id}” has {string.Join(", ", group.Stages.Select(stage => stage.Amount()))}", "give that group one stage with the same value");
        }
    }
}
