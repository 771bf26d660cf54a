using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Data.Cars;

namespace ShopJobs.Web.Components.MyWork;

/// <summary>One step on somebody's list.</summary>
/// <param name="Place">What the place is called where the car stands; empty where it stands at none.</param>
/// <param name="Words">The next action, or why it waits.</param>
public sealed record WorkItem(Car Car, string Place, JobId Job, StepInstance Step, string Words)
{
    /// <summary>Where a touch leads.</summary>
    public string Href => Links.Step(Car.Id, Job, Step.Id);
}
