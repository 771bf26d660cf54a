using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>Every published row on fasteners against the domain, one theory for each file.</summary>
public class FastenerReferenceTests(ITestOutputHelper output)
{
    public static TheoryData<int, string> Threads => Of(FastenerFiles.Threads);

    public static TheoryData<int, string> ThreadLimits => Of(FastenerFiles.ThreadLimits);

    public static TheoryData<int, string> Units => Of(FastenerFiles.Units);

    public static TheoryData<int, string> Grades => Of(FastenerFiles.Grades);

    public static TheoryData<int, string> TorqueTables => Of(FastenerFiles.TorqueTables);

    public static TheoryData<int, string> Wrench => Of(FastenerFiles.Wrench);

    public static TheoryData<int, string> WorkedExamples => Of(FastenerFiles.WorkedExamples);

    public static TheoryData<int, string> Rules => Of(FastenerFiles.Rules);

    [Theory]
    [MemberData(nameof(Threads))]
    public void Thread_geometry(int number, string id) => Check(FastenerFiles.Threads, number, id);

    [Theory]
    [MemberData(nameof(ThreadLimits))]
    public void Thread_limits(int number, string id) => Check(FastenerFiles.ThreadLimits, number, id);

    [Theory]
    [MemberData(nameof(Units))]
    public void Unit_factors(int number, string id) => Check(FastenerFiles.Units, number, id);

    [Theory]
    [MemberData(nameof(Grades))]
    public void Strength(int number, string id) => Check(FastenerFiles.Grades, number, id);

    [Theory]
    [MemberData(nameof(TorqueTables))]
    public void Torque_tables(int number, string id) => Check(FastenerFiles.TorqueTables, number, id);

    [Theory]
    [MemberData(nameof(Wrench))]
    public void Torque_tools(int number, string id) => Check(FastenerFiles.Wrench, number, id);

    [Theory]
    [MemberData(nameof(WorkedExamples))]
    public void Worked_examples(int number, string id) => Check(FastenerFiles.WorkedExamples, number, id);

    [Theory]
    [MemberData(nameof(Rules))]
    public void Published_rules(int number, string id) => Check(FastenerFiles.Rules, number, id);

    [Fact]
    public void Nearly_every_row_is_checked_and_none_that_was_seen_is_left_out()
    {
        var (all, left) = (0, new List<string>());
        foreach (var file in FastenerFiles.All)
        {
            foreach (var kind in file.Rows().GroupBy(file.KindOf))
            {
                output.WriteLine($"{kind.Count(),4}  {file.Name}: {kind.Key}");
                all += kind.Count();
                foreach (var row in kind.Where(row => !file.Maps(row)))
                {
                    output.WriteLine($"      {row.Id} is not covered: {NotCovered.Reason(file.Name, kind.Key) ?? "no reason given"}");
                    left.Add(row.Id);
                    Assert.NotEqual("seen", row.Evidence);
                    Assert.NotNull(NotCovered.Reason(file.Name, kind.Key));
                }
            }
        }

        output.WriteLine($"{all,4}  rows in all, {all - left.Count} checked, {left.Count} not covered");
        Assert.True(left.Count <= all * NotCovered.Most, $"{left.Count} of {all} rows are not covered.");
    }

    private static void Check(ReferenceFile file, int number, string id)
    {
        var row = file.Rows()[number - 1];
        Assert.Equal(id, row.Id);
        file.Check(row);
    }

    private static TheoryData<int, string> Of(ReferenceFile file)
    {
        var data = new TheoryData<int, string>();
        foreach (var (row, index) in file.Rows().Select((row, index) => (row, index)))
        {
            data.Add(index + 1, row.Id);
        }

        return data;
    }
}
