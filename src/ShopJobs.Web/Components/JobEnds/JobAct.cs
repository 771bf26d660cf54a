namespace ShopJobs.Web.Components.JobEnds;

/// <summary>What the lead does with a job as a whole.</summary>
public enum JobAct
{
    End,
    Hold,
    Resume,
    Cancel,
    WrongCar,
}
