namespace ShopJobs.Domain.Tests.Specification.RoadTests;

/// <summary>What is asked of the lead.</summary>
internal enum Asked
{
    Nothing,
    RoadTest,
    RoadTestOfNobody,
    Road,
    RoadToldInWriting,
    Track,
    TrackToldInWriting,
}

/// <summary>A car with new pads: bed-in is a result that needs a drive, alignment one that does not.</summary>
/// <param name="JointsCount">Every joint counts as for road.</param>
/// <param name="Out">A road test goes on.</param>
/// <param name="Driven">It was driven on one.</param>
internal readonly record struct TestedCar(bool JointsCount, bool Aligned, bool BedIn, bool Out, bool Driven, Asked Asked, bool Granted)
{
    public static readonly Asked[] All = [.. Enum.GetValues<Asked>().Skip(1)];

    public static readonly TestedCar Start = new() { JointsCount = true };

    public bool May(Asked asked) => JointsCount && Aligned && asked switch
    {
        Asked.RoadTest or Asked.RoadToldInWriting => true,
        Asked.Road or Asked.Track or Asked.TrackToldInWriting => BedIn,
        _ => false,
    };

    public TestedCar Ask(Asked asked) => this with { Asked = asked, Granted = May(asked), Out = asked is Asked.RoadTest && May(asked) };

    public TestedCar Drive() => Told() with { Driven = true };

    public TestedCar Comes() => Told() with { Out = false };

    public TestedCar Bed() => Told() with { BedIn = true };

    public TestedCar Align() => Told() with { Aligned = true };

    public TestedCar OpenJoint() => Start with { JointsCount = false, BedIn = BedIn };

    public TestedCar Tighten() => Told() with { JointsCount = true };

    private TestedCar Told() => this with { Asked = Asked.Nothing, Granted = false };
}
