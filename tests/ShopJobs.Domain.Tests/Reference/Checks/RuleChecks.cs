using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Reference.Statements;

namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>Rules with a value: as figures where something computes with them, else as the statement held beside its topic.</summary>
internal static class RuleChecks
{
    private const string FaceSettling = "embedding fz ";

    public static Action<ReferenceRow>? Of(string kind) => kind switch
    {
        "min prevailing torque reused nut" => LeastPrevailingTorque,
        _ when kind.StartsWith(FaceSettling, StringComparison.Ordinal) => Settling,
        _ when PublishedRules.All.Any(rule => rule.Topic == kind) => Statement,
        _ => null,
    };

    private static void LeastPrevailingTorque(ReferenceRow row)
    {
        var least = PrevailingTorque.LeastOfUsedNut(ThreadSize.Parse(row["rule"]));
        row.Holds(least is not null, $"no least torque is held for {row["rule"]}");
        row.Near(row["rule"], (double)EnteredTorque.Parse(row["value"]).NewtonMetres, (double)least!.Value.NewtonMetres, 1e-9);
        row.Near("N.m", double.Parse(ReferenceRow.NumbersIn(row["computed"])[0], CultureInfo.InvariantCulture), (double)least.Value.NewtonMetres, 0.0005);
    }

    private static void Settling(ReferenceRow row)
    {
        var roughness = row["rule"] switch
        {
            var rule when Regex.IsMatch(rule, @"^(Rz )?< ?10") => FaceRoughness.Fine,
            var rule when rule.StartsWith("10", StringComparison.Ordinal) => FaceRoughness.Medium,
            var rule when rule.StartsWith("40", StringComparison.Ordinal) => FaceRoughness.Coarse,
            var rule => throw new InvalidDataException($"{row.Id}: roughness \"{rule}\"."),
        };
        var shear = row["kind"].Contains("shear", StringComparison.Ordinal);
        var (thread, head, inner) = Embedding.Guide(roughness, shear);
        double[] held = [thread, head, inner];
        foreach (var (text, value) in ReferenceRow.NumbersIn(row["value"]).Zip(held))
        {
            row.Near(row["kind"], double.Parse(text, CultureInfo.InvariantCulture), value, 1e-9);
        }

        if (ReferenceRow.NumbersIn(row["computed"]) is [.., var sum])
        {
            row.Near("one joint", double.Parse(sum, CultureInfo.InvariantCulture), Embedding.Settling(roughness, shear, 2, 1).Micrometers, 1e-9);
        }
    }

    private static void Statement(ReferenceRow row) => RowWords.MatchesOne(
        row, "", $"{row["rule"]} {row["value"]}", [.. PublishedRules.All.Where(rule => rule.Topic == row["kind"]).Select(rule => ("", rule.Statement))]);
}
