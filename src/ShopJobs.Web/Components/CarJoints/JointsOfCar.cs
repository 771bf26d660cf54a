using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarJoints;

/// <summary>Which joints a car has, and what a change would take away or add, in words.</summary>
internal static class JointsOfCar
{
    /// <summary>What people call the list that it follows.</summary>
    public static string Follows(CarReading reading) =>
        reading.Now.Register.Followed.FirstOrDefault(kind => kind.Key == reading.State.Joints.Follows).Name
        ?? $"“{reading.State.Joints.Follows}”, which the register has no more";

    /// <summary>How many there are: "31 kinds of joint, 190 fasteners".</summary>
    public static string Counted(JointRegister register)
    {
        var lasting = register.Kinds.Values.Where(kind => !kind.Temporary).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{lasting.Count} kinds of joint, {lasting.Sum(kind => kind.AllPositions().Count())} fasteners");
    }

    /// <summary>Its own counts, a line for each.</summary>
    public static IReadOnlyList<string> Own(CarReading reading) =>
        [.. reading.State.Joints.Counts.Select(count => string.Create(CultureInfo.InvariantCulture, $"{reading.Now.Name(new Joint(count.Key, count.Place))}: {count.Positions}"))];

    /// <summary>What a change takes away and adds, a line for each kind of joint.</summary>
    public static IReadOnlyList<string> Effect(CarReading reading, string? follows, IReadOnlyList<JointCount> counts)
    {
        var register = reading.Now.Register;
        return
        [
            .. RegisterChanges.Between(register, register.For(reading.State.Joints.With(follows, counts)))
                .Where(change => !change.Kind.Temporary && change.Lost.Count + change.Added.Count > 0)
                .SelectMany(change => Lines(change)),
        ];
    }

    /// <summary>The counts of a joint and of all that ride with it at the same place.</summary>
    public static IReadOnlyList<JointCount> Together(JointRegister register, Joint joint, int positions) =>
        [.. register.Riding(joint.Key).Where(kind => kind.Places.Contains(joint.Place)).Select(kind => new JointCount(kind.Key, joint.Place, positions))];

    private static IEnumerable<string> Lines(KindChange change)
    {
        if (change.Lost.Count > 0)
        {
            yield return $"Taken away: {change.Kind.Name}, {RegisterWords.Positions(change.Lost)}.";
        }

        if (change.Added.Count > 0)
        {
            yield return $"Added, as found: {change.Kind.Name}, {RegisterWords.Positions(change.Added)}.";
        }
    }
}
