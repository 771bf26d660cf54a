using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Releases;

/// <summary>What a re-torque would become, said before it is signed, by the rules that will judge it.</summary>
public static class ReTorqueWords
{
    private const string HoldsIt = "it is recorded, holds the fastener and does not settle it.";

    /// <summary>"Too early: 20 km more. ..."; null where it is not.</summary>
    public static string? Early(CarReading reading, JointPosition position, decimal? odometerKm)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var book = reading.State.Of(position);
        if (odometerKm is not { } km || !reading.State.IsBelowItsDistance(book, km))
        {
            return null;
        }

        var more = reading.State.FirstDrive(book)!.Fact.OdometerKm!.Value + book.Last!.Fact.Spec.ReTorque!.AfterKm!.Value - km;
        return reading.State.IsAtItsLastDay(reading.Now, book)
            ? $"{reading.Now.Distance.Say(more)} are missing, and its last day is reached: settled early by the lead's signature alone."
            : $"Too early: {reading.Now.Distance.Say(more)} more. It is recorded and does not settle the joint.";
    }

    /// <summary>Said of a joint that turned further than one settles; null where it did not.</summary>
    public static string? TooFar(decimal? angleDegrees) => angleDegrees > ReTorque.LargestMove
        ? string.Create(CultureInfo.InvariantCulture, $"Moved by more than {ReTorque.LargestMove:0}°: it was loose. It is held; nobody drives before the lead has decided.")
        : null;

    /// <summary>Said of a torque outside what is permitted; null where it is inside.</summary>
    public static string? Outside(DueJoint due, EnteredTorque typed)
    {
        ArgumentNullException.ThrowIfNull(due);
        return due.Instance.Group.Final.Permitted.Contains(typed)
            ? null
            : $"{typed} is outside the permitted {due.Instance.Group.Final.Permitted}: {HoldsIt}";
    }

    /// <summary>Said where the car stands otherwise than the last stage asks; null where it does not.</summary>
    public static string? Otherwise(CarReading reading, DueJoint due)
    {
        ArgumentNullException.ThrowIfNull(due);
        var said = due.Conditions.Select(asked => due.SaidOf(reading, asked) is { } now && now.Value != asked.Value ? ConditionSaid.Value(now.Value) : null).OfType<string>().ToList();
        return said.Count == 0 ? null : $"The car is not in the condition asked ({string.Join(", ", said)}): {HoldsIt}";
    }

    /// <summary>From when and until when it is due: "due from 1050 to 1100 km, by 16 Mar 2026"; says where it is overdue.</summary>
    public static string Due(CarReading reading, JointPosition position, decimal? odometerKm)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var book = reading.State.Of(position);
        if (reading.State.FirstDrive(book) is not { } drive)
        {
            return "";
        }

        var from = drive.Fact.OdometerKm is { } start ? start + book.Last!.Fact.Spec.ReTorque!.AfterKm : null;
        var distance = from is { } first ? $" from {(reading.State.LatestKm(book) is { } last ? reading.Now.Distance.Say(first, last) : reading.Now.Distance.Say(first))}" : "";
        var day = reading.State.LatestDay(reading.Now, book) is { } by ? $", by {WallTime.Day(by)}" : "";
        return reading.State.IsOverdue(reading.Now, book, odometerKm ?? reading.State.Odometer) ? $"OVERDUE: was due{distance}{day}" : $"Due{distance}{day}";
    }
}
