using System.Globalization;

namespace ShopJobs.Domain.Fasteners;

/// <summary>One side of the room for a target: its value at the fastener, its reason, and the exact test without division.</summary>
internal sealed record TargetLimit(bool IsLower, decimal NewtonMetres, string Reason, Func<EnteredTorque, EnteredTorque, bool> IsMetBy)
{
    public override string ToString()
    {
        var shown = Math.Round(NewtonMetres, 2, IsLower ? MidpointRounding.ToPositiveInfinity : MidpointRounding.ToNegativeInfinity);
        return string.Create(CultureInfo.InvariantCulture, $"not {(IsLower ? "below" : "above")} {shown:0.##} N·m: {Reason}");
    }
}

/// <summary>The limits that a question sets.</summary>
internal static class TargetLimits
{
    public static IReadOnlyList<TargetLimit> Of(TargetQuestion q)
    {
        var w = q.DeviationPercent / 100;
        var percent = q.DeviationPercent.ToString("0.##", CultureInfo.InvariantCulture);
        var minimum = q.Permitted.Minimum;
        var maximum = q.Permitted.Maximum;
        var limits = new List<TargetLimit>
        {
            new(true, minimum.NewtonMetres / (1 - w), $"the least permitted, {minimum}, if the tool delivers {percent} % too little",
                (target, _) => target.NewtonMetres * (1 - w) >= minimum.NewtonMetres),
            new(false, maximum.NewtonMetres / (1 + w), $"the greatest permitted, {maximum}, if the tool delivers {percent} % too much",
                (target, _) => target.NewtonMetres * (1 + w) <= maximum.NewtonMetres),
        };
        if (q.Jam is { } jam)
        {
            var jamPercent = q.JamDeviationPercent.ToString("0.##", CultureInfo.InvariantCulture);
            limits.Add(new(false, JamLimit(jam, q.JamDeviationPercent, q.DeviationPercent),
                $"the jam torque, {jam}, if its tool delivers {jamPercent} % too little and the driving tool {percent} % too much",
                (target, _) => target.NewtonMetres * (1 + w) <= jam.NewtonMetres * (1 - (q.JamDeviationPercent / 100))));
        }

        if (q.ToolBottom is { } bottom)
        {
            limits.Add(new(true, bottom.NewtonMetres / q.SettingRatio, $"the tool starts at {bottom}",
                (_, setting) => setting.NewtonMetres >= bottom.NewtonMetres));
        }

        if (q.ToolTop is { } top)
        {
            limits.Add(new(false, top.NewtonMetres / q.SettingRatio, $"the tool ends at {top}",
                (_, setting) => setting.NewtonMetres <= top.NewtonMetres));
        }

        return limits;
    }

    public static decimal JamLimit(EnteredTorque jam, decimal jamDeviationPercent, decimal driveDeviationPercent) =>
        jam.NewtonMetres * (1 - (jamDeviationPercent / 100)) / (1 + (driveDeviationPercent / 100));
}
