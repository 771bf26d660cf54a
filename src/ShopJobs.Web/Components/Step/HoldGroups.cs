using System.Globalization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Step;

/// <summary>Puts the reasons of several positions of one joint into one line, so that five nuts do not fill the screen.</summary>
public static class HoldGroups
{
    /// <summary>Reasons in their order, those alike but for the position's number as one: "wheel nut front-left 1, 2, 3: hand-tight".</summary>
    public static IReadOnlyList<(string Words, string Next)> Of(IReadOnlyList<HoldPoint> points) =>
    [
        .. from point in points
           let number = point.Position?.Number.ToString(CultureInfo.InvariantCulture)
           let mark = number is null ? -1 : point.Words.IndexOf($" {number}", StringComparison.Ordinal)
           group (point, number, mark) by (point.Reason, point.Position?.Joint, point.Next, Shape: mark < 0 ? point.Words : point.Words.Remove(mark, number!.Length + 1)) into alike
           let first = alike.First()
           select (first.mark < 0 || alike.Count() == 1
               ? first.point.Words
               : first.point.Words.Remove(first.mark, first.number!.Length + 1).Insert(first.mark, $" {string.Join(", ", alike.Select(one => one.number).Distinct())}"),
               first.point.Next),
    ];
}
