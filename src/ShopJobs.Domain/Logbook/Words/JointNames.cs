using System.Globalization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What people call joints and positions.</summary>
public static class JointNames
{
    /// <summary>The joint as people say it: "wheel nut front-left".</summary>
    public static string Name(this Circumstances now, Joint joint)
    {
        ArgumentNullException.ThrowIfNull(now);
        return $"{now.Register.NameOf(joint.Key)} {joint.Place}";
    }

    /// <summary>The position as people say it: "wheel nut front-left 3".</summary>
    public static string Name(this Circumstances now, JointPosition position) =>
        string.Create(CultureInfo.InvariantCulture, $"{now.Name(position.Joint)} {position.Number}");
}
