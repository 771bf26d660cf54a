using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads what a group says of its fastener.</summary>
internal sealed class FastenerReader(ProblemsFound problems)
{
    private const decimal SmallestLength = 0.01m;
    private const decimal LargestLength = 1000;

    private static readonly string[] SeatKinds = ["flat", "cone", "ball"];
    private static readonly string[] FlatKeys = ["kind", "head", "hole"];
    private static readonly string[] ConeKeys = ["kind", "angle", "mean-diameter"];
    private static readonly string[] BallKeys = ["kind", "radius", "mean-diameter"];

    public ThreadSize? Thread(MapReader map)
    {
        if (map.Text("thread") is not { } text)
        {
            return null;
        }

        if (ThreadText.Read(text, out var thread) is { } wrong)
        {
            problems.Error(map.At("thread"), wrong.What, wrong.Next);
        }

        return thread;
    }

    public (StrengthClass? Class, string? Note) Strength(MapReader map)
    {
        var note = map.TextIfAny("class-note", 80);
        if (map.TextIfAny("class") is not { } text)
        {
            return (null, note);
        }

        if (!StrengthClass.TryParse(text, out var strength, out _))
        {
            problems.Error(map.At("class"), StrengthClass.NotKnown(text), "give the class, and put “class-note” beside it where it is only by equivalence");
        }

        return (strength, note);
    }

    public Seat? Seat(MapReader map)
    {
        if (!map.Has("seat"))
        {
            return null;
        }

        var node = map.At("seat");
        var word = (node as MapNode)?.Entries.FirstOrDefault(entry => entry.Key.Text == "kind")?.Value is TextNode { Text: var text } ? text : null;
        if (word is not null && !SeatKinds.Contains(word))
        {
            problems.Error(node, $"A seat of the kind {Wording.Quote(word)} is not known", Wording.Nearest(word, SeatKinds));
            return null;
        }

        if (MapReader.Of(node, problems, word switch { "cone" => ConeKeys, "ball" => BallKeys, _ => FlatKeys }) is not { } seat || seat.Text("kind") is null)
        {
            return null;
        }

        if (word == "cone")
        {
            var angle = seat.Needed("angle") is { } at ? Amounts.With(at, problems, "deg", 30, 170) : null;
            return Length(seat, "mean-diameter") is { } mean && angle is { } degrees
                ? new ConeSeat(Angle.FromDegrees((double)degrees), mean)
                : null;
        }

        if (word == "ball")
        {
            if (Length(seat, "radius") is not { } radius || Length(seat, "mean-diameter") is not { } mean)
            {
                return null;
            }

            if (mean < radius * 2)
            {
                return new BallSeat(radius, mean);
            }

            problems.Error(seat.At("mean-diameter"), "The ring of contact is not smaller than the ball", "measure both again");
            return null;
        }

        if (Length(seat, "head") is not { } head || Length(seat, "hole") is not { } hole)
        {
            return null;
        }

        if (head > hole)
        {
            return new FlatSeat(head, hole);
        }

        problems.Error(seat.At("head"), "The face is not larger than its hole", "measure both again");
        return null;
    }

    public Hardware? Hardware(MapReader map)
    {
        if (map.Needed("hardware") is not { } node || MapReader.Of(node, problems, ["name", "reuse"]) is not { } hardware)
        {
            return null;
        }

        var name = hardware.Text("name", 120);
        var reuse = hardware.Choice("reuse", Vocabulary.Reuse);
        return name is null || reuse is null ? null : new Hardware(name, reuse.Value);
    }

    /// <summary><c>none</c>, <c>forbidden</c>, or the distances and days. It must be written: none is never assumed.</summary>
    public ReTorque? ReTorque(MapReader map)
    {
        if (map.Needed("re-torque") is not { } node || node is TextNode { Text: "none" })
        {
            return null;
        }

        if (node is TextNode { Text: "forbidden" })
        {
            return new ReTorque(true, null, null, null);
        }

        if (node is TextNode { Text: var text })
        {
            problems.Error(node, $"{Wording.Quote(text)} is no re-torque rule", "write none, forbidden, or {after: 50 km, before: 100 km, within: 30 days}");
            return null;
        }

        if (MapReader.Of(node, problems, ["after", "before", "within"]) is not { } rule)
        {
            return null;
        }

        var after = rule.Needed("after") is { } from ? Amounts.With(from, problems, "km", 1, 10_000) : null;
        var before = rule.Needed("before") is { } to ? Amounts.With(to, problems, "km", 1, 10_000) : null;
        var within = rule.Needed("within") is { } days ? Amounts.With(days, problems, "days", 1, 365) : null;
        if (after >= before)
        {
            problems.Error(rule.At("before"), "The distance by which it is due is not above the one from which it is allowed", "put “after” below “before”");
        }

        return after is null || before is null || within is null ? null : new ReTorque(false, (int)after, (int)before, (int)within);
    }

    public JamPair? Jam(MapReader map, out string? group)
    {
        group = null;
        if (!map.Has("jam") || MapReader.Of(map.At("jam"), problems, ["torque", "group", "tool-deviation"]) is not { } jam)
        {
            return null;
        }

        var torque = jam.Needed("torque") is { } at ? Amounts.Torque(at, problems) : null;
        group = jam.Id("group");
        var deviation = jam.Needed("tool-deviation") is { } percent ? Amounts.With(percent, problems, "%", 0, 50) : null;
        return torque is null || group is null || deviation is null ? null : new JamPair(torque.Value, group, deviation.Value);
    }

    /// <summary>What the run-down torque may be: asked where it is added, else not taken.</summary>
    public TorqueRange? RunDownPermitted(MapReader map, RunDown? runDown)
    {
        if (runDown == RunDown.Add)
        {
            return map.Needed("run-down-permitted") is { } node ? Amounts.Range(node, problems) : null;
        }

        if (map.Has("run-down-permitted") && runDown is not null)
        {
            problems.Error(map.At("run-down-permitted"), "The run-down torque is not added here", "write “run-down: add”, or delete the line");
        }

        return null;
    }

    public Adapter? Adapter(MapReader map, Provenance? groupSource)
    {
        if (!map.Has("adapter") || MapReader.Of(map.At("adapter"), problems, ["name", "length", "wrench", "angle", "source"]) is not { } adapter)
        {
            return null;
        }

        var name = adapter.Text("name", 80);
        var length = Length(adapter, "length");
        var wrench = Length(adapter, "wrench");
        var angle = adapter.Needed("angle") is { } at ? Amounts.With(at, problems, "deg", 0, 180) : null;
        var source = SourceReader.Read(adapter, groupSource);
        if (length is not { } reach || wrench is not { } lever || angle is not { } degrees || name is null || source is null)
        {
            return null;
        }

        if (lever.Millimeters + (reach.Millimeters * Math.Cos((double)degrees * Math.PI / 180)) < AdapterSetting.ShortestLever)
        {
            problems.Error(adapter.Map, "Wrench and adapter leave no lever", "measure both lengths and the angle again");
            return null;
        }

        return new Adapter(name, new AdapterSetting(lever, reach, Angle.FromDegrees((double)degrees)), source);
    }

    private Length? Length(MapReader map, string key) =>
        map.Needed(key) is { } node && Amounts.With(node, problems, "mm", SmallestLength, LargestLength) is { } value
            ? UnitsNet.Length.FromMillimeters((double)value)
            : null;
}
