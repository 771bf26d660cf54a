using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>What ids are called, for putting entries into words.</summary>
/// <param name="Joint">A joint as people say it: "wheel nut front-left".</param>
/// <param name="Tool">A tool as it is called in the shop: "W7".</param>
/// <param name="Job">A job by its procedure: "P5".</param>
/// <param name="Step">A step instance of a job by its title.</param>
/// <param name="Person">A person's name.</param>
public sealed record EntryNames(
    Func<Joint, string> Joint,
    Func<ToolId, string> Tool,
    Func<JobId, string> Job,
    Func<JobId, string, string> Step,
    Func<PersonId, string> Person)
{
    /// <summary>What the car's odometer counts in.</summary>
    public DistanceUnit Distance { get; init; }

    /// <summary>A place of the shop as people say it: "Lift A".</summary>
    public Func<string, string> Place { get; init; } = static key => key;

    /// <summary>Positions joint by joint: "wheel nut front-left 1 to 3, 5; wheel nut rear-left 2".</summary>
    public string Positions(IEnumerable<JointPosition> positions) => string.Join(
        "; ",
        positions.GroupBy(position => position.Joint, position => position.Number)
            .Select(joint => $"{Joint(joint.Key)} {Numbers(joint.Select(number => (long)number))}"));

    /// <summary>Numbers in order with runs drawn together: "1 to 3, 5".</summary>
    public static string Numbers(IEnumerable<long> numbers)
    {
        var runs = new List<(long From, long To)>();
        foreach (var number in numbers.Distinct().Order())
        {
            if (runs.Count > 0 && runs[^1].To == number - 1)
            {
                runs[^1] = (runs[^1].From, number);
            }
            else
            {
                runs.Add((number, number));
            }
        }

        return string.Join(", ", runs.Select(run => run.To == run.From ? $"{run.From}"
            : run.To == run.From + 1 ? $"{run.From}, {run.To}"
            : $"{run.From} to {run.To}"));
    }
}
