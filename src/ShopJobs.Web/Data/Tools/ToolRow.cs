namespace ShopJobs.Web.Data.Tools;

/// <summary>A torque tool's name. Everything else about it is in the tool's logbook, which has the same id.</summary>
public sealed class ToolRow : TrackedRow
{
    public Guid Id { get; init; }

    public required string Name { get; set; }
}
