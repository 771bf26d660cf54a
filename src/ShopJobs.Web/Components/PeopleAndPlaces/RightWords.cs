using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>What each right lets a person do, in the shop's words.</summary>
public static class RightWords
{
    public static string Words(this Right right) => right switch
    {
        Right.Record => "record",
        Right.Witness => "witness",
        Right.Author => "author",
        Right.Decide => "decide",
        Right.Release => "release",
        Right.Lead => "lead",
        Right.Trainee => "learn",
        _ => throw new ArgumentOutOfRangeException(nameof(right), right, "Not a right."),
    };

    public static string Meaning(this Right right) => right switch
    {
        Right.Record => "records torque and signs steps",
        Right.Witness => "checks another person's joints",
        Right.Author => "writes and publishes procedures",
        Right.Decide => "decides what happens with what is held",
        Right.Release => "releases cars to move, to road, to track",
        Right.Lead => "looks after people, tablets, customers, cars and tools",
        Right.Trainee => "trainee: pulls and signs, and somebody who stood by countersigns; held alone",
        _ => throw new ArgumentOutOfRangeException(nameof(right), right, "Not a right."),
    };
}
