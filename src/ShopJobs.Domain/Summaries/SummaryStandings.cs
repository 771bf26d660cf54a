using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Summaries;

/// <summary>Derives whether an issued version still says what is so.</summary>
public static class SummaryStandings
{
    /// <summary>The standing of a version.</summary>
    /// <param name="state">The car as it stands now.</param>
    /// <param name="summary">The issued version.</param>
    /// <param name="entries">Entries of the car's logbook; those before the version are passed over.</param>
    /// <param name="register">The joint register, for the words.</param>
    /// <param name="tool">The state of a tool.</param>
    public static SummaryStanding StandingOf(
        this CarState state, SummaryBook summary, IEnumerable<Recorded> entries, JointRegister register, Func<ToolId, ToolState> tool)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(register);
        var next = state.Summaries.Find(other => other.Fact.Version > summary.Fact.Version);
        if (next is not null)
        {
            return new SummaryStanding.Replaced(next.Fact.Version, next.At);
        }

        var since = entries.Where(entry => entry.Number > summary.Number).ToList();
        var against = since.Select(entry => (entry.At, Words: Against(entry.Entry, register))).Where(found => found.Words is not null)
            .Concat(Doubts(state, summary, tool)).ToList();
        var opened = since.Select(entry => entry.Entry).OfType<Opened>().SelectMany(fact => Lasting(fact, register))
            .Select(position => position.Joint).Distinct().Select(joint => Name(register, joint)).ToList();
        if (against.Count > 0)
        {
            return new SummaryStanding.Overtaken(
                against.Min(found => found.At), opened, [.. against.Select(found => found.Words!).Where(words => words.Length > 0).Distinct()], Grave: true);
        }

        var good = since.Where(entry => entry.Entry is not (JobStarted or CarConditionDeclared)).ToList();
        return good.Count > 0
            ? new SummaryStanding.Overtaken(good[0].At, [], [], Grave: false)
            : new SummaryStanding.Current();
    }

    /// <summary>What an entry says against an earlier summary; empty for an opening, null when nothing.</summary>
    private static string? Against(Entry entry, JointRegister register) => entry switch
    {
        Opened fact => Lasting(fact, register).Any() ? "" : null,
        TorqueRecorded { Problems: [HoldReason.UnderRange] } => null,
        PositionHeld or TorqueRecorded { Problems.Count: > 0 } or Settled { Problems.Count: > 0 } or Witnessed { Accepted: false } => "a joint is held",
        Corrected => "a record was corrected",
        Decided => "a held joint was decided",
        ResultRecorded { Undid.Count: > 0 } => "a setting was changed",
        _ => null,
    };

    private static IEnumerable<JointPosition> Lasting(Opened fact, JointRegister register) => fact.Positions.Concat(fact.AlsoOpened)
        .Where(position => !register.Kinds.TryGetValue(position.Key, out var kind) || !kind.Temporary);

    private static IEnumerable<(DateTime At, string? Words)> Doubts(CarState state, SummaryBook summary, Func<ToolId, ToolState> tool) =>
        from book in state.Positions.Values
        from found in state.DoubtsOn(book, tool)
        let doubt = tool(found.Tool).Doubts.Find(raised => raised.Number == found.Number)
        where doubt is not null && doubt.Until > summary.At
        select (doubt.Until, (string?)"a tool that was used is in doubt");

    private static string Name(JointRegister register, Joint joint) =>
        $"{(register.Kinds.TryGetValue(joint.Key, out var kind) ? kind.Name : joint.Key)}, {joint.Place}";
}
