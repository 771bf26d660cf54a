using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>Stages up to a final torque.</summary>
public sealed class StagesCard : BenchCard
{
    private readonly TorqueField final = new("final", "Final torque") { Example = "110" };
    private readonly ChoiceField<StagedTightening> pattern = new("stages", "Brought up in",
    [
        new("two", "two stages, 70 and 100 %", StagedTightening.TwoStages), new("three", "three stages, 30, 70 and 100 %", StagedTightening.ThreeStages),
    ])
    {
        Example = "two",
    };

    private readonly TorqueField graduation = new("graduation", "Steps of the wrench") { Example = "1" };

    /// <inheritdoc/>
    public override string Key => "stages";

    /// <inheritdoc/>
    public override string Question => "In which stages do I bring a group up?";

    /// <inheritdoc/>
    public override string Use => "Published patterns for where the instruction gives none, on the marks of the wrench.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [final, pattern, graduation];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["stage = share × final torque, rounded down to a mark; the last is the final torque"],
        [new("share", "30, 70, 100 % or 70, 100 %")],
        "US Army TM 5-3805-248-23-1 (two stages above 30 lbf·ft); ASME PCC-1, from memory (three).",
        "The instruction's own stages win. Every fastener of the group is at one stage before the next begins, in a cross or a spiral.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, picked, torque) = (inputs.Units, pattern.Read(inputs), final.Read(inputs));
        var step = new WrenchStep(graduation.Read(inputs));
        var stages = picked.StagesOf(torque, step.Size.NewtonMetres / torque.Unit.NewtonMetresPerUnit());
        var marks = stages.Select((stage, at) => (Percent: picked.Percent[at], Mark: stage == torque ? torque : step.Nearest(stage), Is0: stage.Value == 0))
            .Where(stage => !stage.Is0).ToList();
        return new BenchAnswer(string.Join(", ", marks.Select(stage => units.Set(stage.Mark))), $"{string.Join(", then ", marks.Select(stage => units.Set(stage.Mark)))} ({step}).")
        {
            Pictures = [units.Torques([.. marks.Select((stage, at) => units.Mark(Name(at), stage.Mark, LineMarkKind.Value, units.Set(stage.Mark)))])],
            Lines = [.. marks.Select((stage, at) => new BenchLine(Name(at), units.Set(stage.Mark), FormattableString.Invariant($"{stage.Percent} %")))],
            Cautions = [.. Cautions()],
        };

        static string Name(int at) => FormattableString.Invariant($"Stage {at + 1}");

        IEnumerable<string> Cautions()
        {
            if (torque.NewtonMetres <= StagedTightening.TwoStagesAbove.NewtonMetres)
            {
                yield return $"Up to {units.Say(StagedTightening.TwoStagesAbove)} the manual behind the two stages asks for none.";
            }
            else if (stages[0].Value == 0)
            {
                yield return "The steps of the wrench are coarser than the first stage: use a finer wrench.";
            }

            if (!step.IsMark(torque))
            {
                yield return $"{units.Say(torque)} is no mark of this wrench ({step}): the last stage needs a finer one.";
            }
        }
    }
}
