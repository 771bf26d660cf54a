using System.Globalization;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the stages of a group: torques, then angles turned on from the last of them.</summary>
internal sealed class StageReader(ProblemsFound problems, JointRegister register)
{
    /// <summary>An intermediate stage is accepted from 80 to 120 % of its value where nothing else is written: common practice, no source.</summary>
    private const decimal LeastShare = 0.8m;
    private const decimal MostShare = 1.2m;
    private const int MostVisits = 300;

    private static readonly string[] Keys = ["value", "turn", "permitted", "conditions", "evidence", "witness", "visits", "source"];

    /// <summary>One stage as far as it could be read; <see cref="Stage"/> is null where a part is missing.</summary>
    /// <param name="IsTurned">True for an angle stage; value and permitted torque are those of the stage it is turned on from.</param>
    internal sealed record Draft(MapReader Map, EnteredTorque? Value, TorqueRange? Permitted, bool PermittedIsDefault, bool IsTurned, Stage? Stage);

    public IReadOnlyList<Draft> Read(IReadOnlyList<DocumentNode> nodes, JointKind? kind, Provenance? groupSource)
    {
        var maps = nodes.Select(node => MapReader.Of(node, problems, Keys)).ToList();
        var lastTorque = maps.FindLastIndex(map => map?.Has("turn") != true);
        var drafts = new List<Draft>();
        foreach (var (map, index) in maps.Select((map, index) => (map, index)))
        {
            if (map?.Has("turn") == true)
            {
                drafts.Add(Turned(map, index + 1, drafts.FindLast(draft => !draft.IsTurned), kind, groupSource));
            }
            else if (map is not null)
            {
                drafts.Add(Pulled(map, index + 1, isFinal: index == lastTorque, kind, groupSource));
            }
        }

        CheckOrder([.. drafts.Where(draft => !draft.IsTurned)]);
        CheckTurns(drafts);
        return drafts;
    }

    private Draft Pulled(MapReader map, int number, bool isFinal, JointKind? kind, Provenance? groupSource)
    {
        var value = map.Needed("value") is { } at ? Amounts.Torque(at, problems) : null;
        var isDefault = !map.Has("permitted") && !isFinal;
        var permitted = map.Has("permitted") ? Amounts.Range(map.At("permitted"), problems)
            : isFinal ? Missing(map)
            : value is { } middle
                ? new TorqueRange(middle with { Value = middle.Value * LeastShare }, middle with { Value = middle.Value * MostShare })
                : null;
        var conditions = Conditions(map);
        var evidence = map.Choice("evidence", Vocabulary.Evidence, Evidence.SettingOrReading);
        var witness = map.YesNo("witness", false);
        var visits = Visits(map, kind);
        var source = SourceReader.Read(map, groupSource);
        if (value is { } torque && permitted is not null && !permitted.Contains(torque))
        {
            problems.Error(map.At("value"), $"{torque} is {(permitted.IsUnder(torque) ? "below" : "above")} the permitted {permitted}", "choose a value inside, or read the range again from the instruction");
        }

        var whole = value is not null && permitted is not null && evidence is not null && witness is not null && source is not null;
        return new Draft(map, value, permitted, isDefault, false, whole
            ? new Stage(number, value!.Value, permitted!, conditions, evidence!.Value, witness!.Value, visits, source!)
            : null);
    }

    private Draft Turned(MapReader map, int number, Draft? from, JointKind? kind, Provenance? groupSource)
    {
        if (map.Has("value"))
        {
            problems.Error(map.At("value"), $"Stage {number} has both “value” and “turn”", "write the torque and the angle as two stages");
        }

        if (map.Has("evidence"))
        {
            problems.Error(map.At("evidence"), "An angle is always read on a tool that measures it", "delete the line");
        }

        var turn = Turn(map);
        var conditions = Conditions(map);
        var witness = map.YesNo("witness", false);
        var visits = Visits(map, kind);
        var source = SourceReader.Read(map, groupSource);
        return new Draft(map, from?.Value, from?.Permitted, false, true, turn is not null && witness is not null && source is not null && from?.Stage is { } below
            ? new Stage(number, below.Value, below.Permitted, conditions, Evidence.Reading, witness.Value, visits, source) { Turn = turn }
            : null);
    }

    private Turn? Turn(MapReader map)
    {
        var degrees = Amounts.With(map.At("turn"), problems, "deg", Procedures.Turn.Least, Procedures.Turn.Most);
        if (!map.Has("permitted"))
        {
            problems.Error(map.Map, "The angle stage has no “permitted”", "write the angles that the instruction allows, for example 85..95 deg");
            return null;
        }

        if (Amounts.Angles(map.At("permitted"), problems, Procedures.Turn.Least, Procedures.Turn.Most) is not var (least, most) || degrees is not { } asked)
        {
            return null;
        }

        var turn = new Turn(asked, least, most);
        if (!turn.Contains(asked))
        {
            problems.Error(map.At("turn"), $"{Procedures.Turn.Amount(asked)} is {(asked < least ? "below" : "above")} the permitted {turn.Permitted()}", "choose an angle inside, or read the range again from the instruction");
            return null;
        }

        return turn;
    }

    private void CheckTurns(List<Draft> drafts)
    {
        if (drafts is [{ IsTurned: true } first, ..])
        {
            problems.Error(first.Map.At("turn"), "The first stage turns by an angle, and nothing is snug yet", "write a torque stage before it, with its “value”");
        }

        foreach (var (before, after) in drafts.Zip(drafts.Skip(1)).Where(pair => pair is { First.IsTurned: true, Second.IsTurned: false }))
        {
            problems.Error(after.Map.At("value"), "A torque follows on an angle", "put the torque stages first, the angles after the last of them");
        }
    }

    private TorqueRange? Missing(MapReader map)
    {
        problems.Error(map.Map, "The final stage has no “permitted”", "write the range of the instruction, or its one value");
        return null;
    }

    private List<CarCondition> Conditions(MapReader map)
    {
        var found = new List<CarCondition>();
        if (!map.Has("conditions") || MapReader.Of(map.At("conditions"), problems, [.. register.Conditions.Keys]) is not { } asked)
        {
            return found;
        }

        foreach (var (aspect, values) in register.Conditions)
        {
            if (!asked.Has(aspect) || asked.Text(aspect) is not { } value)
            {
                continue;
            }

            if (values.Contains(value))
            {
                found.Add(new CarCondition(aspect, value));
            }
            else
            {
                problems.Error(asked.At(aspect), $"The car's “{aspect}” is never {Wording.Quote(value)} in the register", Wording.Nearest(value, values));
            }
        }

        return found;
    }

    private List<int> Visits(MapReader map, JointKind? kind)
    {
        var visits = new List<int>();
        var nodes = map.Needed("visits") is null ? [] : map.List("visits");
        if (nodes.Count > MostVisits)
        {
            problems.Error(map.At("visits"), $"There are {nodes.Count} visits, at most {MostVisits} are taken", "split the group");
            return visits;
        }

        foreach (var node in nodes)
        {
            if (MapReader.TextOf(node, problems) is not { } text)
            {
                continue;
            }

            if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var position)
                || position < 1 || position > (kind?.Positions ?? int.MaxValue))
            {
                problems.Error(node, $"{Wording.Quote(text)} is not a position{(kind is null ? "" : $" from 1 to {kind.Positions}")}", "name positions by their number in the register");
                continue;
            }

            visits.Add(position);
        }

        var missing = kind is null || !map.Has("visits") ? [] : Enumerable.Range(1, kind.Positions).Except(visits).ToList();
        if (missing.Count > 0 && visits.Count == nodes.Count)
        {
            problems.Error(map.At("visits"), $"The visits leave out position {string.Join(", ", missing)}", "every position is pulled at every stage");
        }

        return visits;
    }

    private void CheckOrder(List<Draft> drafts)
    {
        if (drafts.Count < 2)
        {
            return;
        }

        var final = drafts[^1].Permitted;
        for (var index = 0; index < drafts.Count - 1; index++)
        {
            var (lower, upper) = (drafts[index], drafts[index + 1]);
            if (lower.Permitted is { } range && final is not null && range.Maximum.NewtonMetres >= final.Minimum.NewtonMetres)
            {
                problems.Error(
                    lower.Map.At("permitted"),
                    $"Stage {index + 1} would be accepted up to {range.Maximum}{(lower.PermittedIsDefault ? " (120 %, as nothing else is written)" : "")}, and the final stage begins at {final.Minimum}",
                    "write a “permitted” that ends below the final minimum");
            }

            if (lower.Value is { } first && upper.Value is { } next && next.NewtonMetres <= first.NewtonMetres)
            {
                problems.Error(upper.Map.At("value"), $"Stage {index + 2} asks {next}, not more than stage {index + 1} with {first}", "put the stages in rising order");
            }
        }
    }
}
