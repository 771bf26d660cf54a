using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One aspect of the car's condition as somebody declared it.</summary>
/// <param name="Number">Entry that says so.</param>
public sealed record DeclaredCondition(string Aspect, string Value, string? Place, long Number, DateTime At, PersonId Person, CarConditionDeclared Fact);

/// <summary>
/// Which declarations of the car's condition are good. One ends at a release, at an opening that its aspect depends on, and at its age.
/// </summary>
public static class CarConditions
{
    /// <summary>The declaration that says so at a place now; null when none does, or it has ended.</summary>
    /// <param name="place">Where the work is: asked only for an aspect that is of a place.</param>
    public static DeclaredCondition? Declared(this CarState state, Circumstances now, CarCondition condition, string place) =>
        state.LastSaid(now, condition.Aspect, place) is { } said && said.Value == condition.Value && !state.HasEnded(now, said) ? said : null;

    /// <summary>True when the car is declared to be so at a place, and the declaration is still good.</summary>
    public static bool Is(this CarState state, Circumstances now, CarCondition condition, string place) =>
        state.Declared(now, condition, place) is not null;

    /// <summary>What was last said of an aspect at a place, ended or not; null when nothing ever was.</summary>
    public static DeclaredCondition? LastSaid(this CarState state, Circumstances now, string aspect, string place)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return state.Conditions.GetValueOrDefault((now.Register.AspectOf(aspect).OfPlace ? place : null, aspect));
    }

    /// <summary>True when a declaration no longer says how the car is.</summary>
    public static bool HasEnded(this CarState state, Circumstances now, DeclaredCondition said) => state.EndOf(now, said) is not null;

    /// <summary>Why a declaration no longer says how the car is; null while it does.</summary>
    public static ConditionEnd? EndOf(this CarState state, Circumstances now, DeclaredCondition said)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(said);
        var aspect = now.Register.AspectOf(said.Aspect);
        if (state.ReleaseHistory.Find(release => release.Number > said.Number) is { } released)
        {
            return new ConditionEnd.ByRelease(released.Fact.Kind);
        }

        if (state.Visits.Exists(visit => visit.End?.Number > said.Number))
        {
            return new ConditionEnd.ByLeaving();
        }

        if (state.ResumedBy > said.Number)
        {
            return new ConditionEnd.ByResumption();
        }

        if (aspect.LastsHours is { } hours && now.Shop.MayHavePassed(TimeSpan.FromHours((double)hours), said.At, said.Fact, now.Shows))
        {
            return now.Shop.ClockInDoubt ? new ConditionEnd.ByClock() : new ConditionEnd.ByAge(hours);
        }

        return state.Positions.Values.FirstOrDefault(book => book.OpenedBy > said.Number && aspect.EndsAt.Contains(book.Position.Key)
            && (said.Place is null || said.Place == book.Position.Place)) is { } opened
            ? new ConditionEnd.ByOpening(opened.Position.Joint)
            : null;
    }
}
