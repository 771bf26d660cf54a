using System.Globalization;

namespace ShopJobs.Domain.Fasteners;

/// <summary>One side of the room for a target: its value at the fastener, its reason, and the exact test without division.</summary>
internal sealed record TargetLimit(
    bool IsLower, decimal NewtonMetres, string Reason, string Widening, bool IsOfPermitted, Func<EnteredTorque, EnteredTorque, bool> IsMetBy)
{
    public override string ToString() =>
        $"not {(IsLower ? "below" : "above")} {TargetLimits.Shown(NewtonMetres, IsLower)} N·m: {Reason}";
}

/// <summary>The limits that a question sets.</summary>
internal static class TargetLimits
{
    /// <summary>Each limit is met exactly by the test without division; its widening says what moves it.</summary>
    public static IReadOnlyList<TargetLimit> Of(TargetQuestion q)
    {
        var w = q.DeviationPercent / 100;
        var half = q.DeviationPercent / 200;
        var percent = q.DeviationPercent.ToString("0.##", CultureInfo.InvariantCulture);
        var minimum = q.Permitted.Minimum;
        var maximum = q.Permitted.Maximum;
        var limits = new List<TargetLimit>
        {
            new(true, minimum.NewtonMetres / (1 - w), $"the least permitted, {minimum}, if the tool delivers {percent} % too little",
                $"a tool with half the deviation would let it start at {Shown(minimum.NewtonMetres / (1 - half), true)} N·m", true,
                (target, _) => target.NewtonMetres * (1 - w) >= minimum.NewtonMetres),
            new(false, maximum.NewtonMetres / (1 + w), $"the greatest permitted, {maximum}, if the tool delivers {percent} % too much",
                $"a tool with half the deviation would let it go to {Shown(maximum.NewtonMetres / (1 + half), false)} N·m", true,
                (target, _) => target.NewtonMetres * (1 + w) <= maximum.NewtonMetres),
        };
        if (q.Jam is { } jam)
        {
            var jamPercent = q.JamDeviationPercent.ToString("0.##", CultureInfo.InvariantCulture);
            limits.Add(new(false, JamLimit(jam, q.JamDeviationPercent, q.DeviationPercent),
                $"the jam torque, {jam}, if its tool delivers {jamPercent} % too little and the driving tool {percent} % too much",
                "a higher jam torque, as the maker allows, or tools with less deviation would let it go higher", false,
                (target, _) => target.NewtonMetres * (1 + w) <= jam.NewtonMetres * (1 - (q.JamDeviationPercent / 100))));
        }

        if (q.ToolBottom is { } bottom)
        {
            limits.Add(new(true, bottom.NewtonMetres / q.SettingRatio, $"the tool starts at {bottom}",
                "a tool that starts lower would let it start lower", false,
                (_, setting) => setting.NewtonMetres >= bottom.NewtonMetres));
        }

        if (q.ToolTop is { } top)
        {
            limits.Add(new(false, top.NewtonMetres / q.SettingRatio, $"the tool ends at {top}",
                "a tool that reaches further would let it go higher", false,
                (_, setting) => setting.NewtonMetres <= top.NewtonMetres));
        }

        return limits;
    }

    /// <summary>A limit in two decimals, rounded inwards.</summary>
    public static string Shown(decimal newtonMetres, bool isLower) => Math
        .Round(newtonMetres, 2, isLower ? MidpointRounding.ToPositiveInfinity : MidpointRounding.ToNegativeInfinity)
        .ToString("0.##", CultureInfo.InvariantCulture);

    public static decimal JamLimit(EnteredTorque jam, decimal jamDeviationPercent, decimal driveDeviationPercent) =>
        jam.NewtonMetres * (1 - (jamDeviationPercent / 100)) / (1 + (driveDeviationPercent / 100));
}
