using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Procedures;

public class RegisterChangeTests
{
    private static readonly JointRegister Before = TestRegister.With(5);

    [Fact]
    public void The_same_register_changes_nothing()
    {
        Assert.Empty(RegisterChanges.Between(Before, TestRegister.With(5)));
        Assert.False(RegisterChanges.OtherThanKinds(Before, TestRegister.With(5)));
    }

    [Fact]
    public void A_lower_count_names_the_positions_that_are_lost()
    {
        var changes = RegisterChanges.Between(Before, TestRegister.With(4));

        Assert.Equal([TestRegister.Jam, TestRegister.Nut, TestRegister.Stud], changes.Select(change => change.Kind.Key));
        var nuts = changes.Single(change => change.Kind.Key == TestRegister.Nut);
        Assert.Equal([new(TestRegister.Nut, TestRegister.Left, 5), new(TestRegister.Nut, TestRegister.Right, 5)], nuts.Lost);
        Assert.Empty(nuts.Added);
        Assert.False(nuts.IsDescribedAnew);
        Assert.Equal(nuts.Lost, RegisterChanges.Between(TestRegister.With(4), Before).Single(change => change.Kind.Key == TestRegister.Nut).Added);
    }

    [Fact]
    public void A_kind_that_is_added_or_removed_is_told_whole()
    {
        var without = Before with { Kinds = Before.Kinds.Where(kind => kind.Key != TestRegister.BarLink).ToDictionary() };

        var removed = Assert.Single(RegisterChanges.Between(Before, without));
        Assert.Equal((TestRegister.BarLink, true, 1), (removed.Kind.Key, removed.After is null, removed.Lost.Count));
        var added = Assert.Single(RegisterChanges.Between(without, Before));
        Assert.Equal((TestRegister.BarLink, true, 1), (added.Kind.Key, added.Before is null, added.Added.Count));
    }

    [Fact]
    public void What_a_release_asks_of_a_joint_is_a_change_though_its_count_stays()
    {
        var changed = With(Before.Kinds[TestRegister.Nut] with { Least = new Dictionary<ReleaseKind, LeastState> { [ReleaseKind.Road] = LeastState.MadeHere } });

        var change = Assert.Single(RegisterChanges.Between(Before, changed));

        Assert.Equal((true, 0, 0), (change.IsDescribedAnew, change.Lost.Count, change.Added.Count));
    }

    [Fact]
    public void Another_value_of_a_condition_or_another_result_is_said_apart_from_the_kinds()
    {
        Assert.True(RegisterChanges.OtherThanKinds(Before, Before with { Conditions = new Dictionary<string, IReadOnlyList<string>> { ["wheel"] = ["up"] } }));
        Assert.True(RegisterChanges.OtherThanKinds(Before, Before with { Results = ["alignment", "bleed"] }));
    }

    private static JointRegister With(JointKind kind) =>
        Before with { Kinds = Before.Kinds.Values.Select(one => one.Key == kind.Key ? kind : one).ToDictionary(one => one.Key) };
}
