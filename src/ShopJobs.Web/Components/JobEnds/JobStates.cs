using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.JobEnds;

/// <summary>Reads what the words of jobs' states name: people, and why.</summary>
public sealed class JobStates(CarEntries entries, PeopleShelf people, ShopClock clock)
{
    /// <summary>The words for the jobs of these cars.</summary>
    public async Task<JobStateWords> OfAsync(IEnumerable<CarState> cars)
    {
        var said = cars.SelectMany(car => car.Jobs.Values).SelectMany(job => new[] { job.OnHold, job.Word }).OfType<JobWord>().ToList();
        return said.Count == 0
            ? JobStateWords.None(clock)
            : new JobStateWords(clock, await people.NamesAsync(), entries.Texts(said.Select(word => word.Reason).OfType<ContentDigest>()));
    }
}
