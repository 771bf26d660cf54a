using System.Collections.Immutable;
using CsCheck;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

public class ByNumberTests
{
    [Fact]
    public void Whatever_is_added_to_whichever_each_holds_what_an_ordinary_dictionary_would()
    {
        Gen.Select(Gen.Int[0, 1000], Gen.Int[1, 3]).List[0, 60].Sample(steps =>
        {
            var all = new List<(ByNumber<string> Own, ImmutableSortedDictionary<long, string> Ordinary)>
            {
                (ByNumber<string>.Empty, ImmutableSortedDictionary<long, string>.Empty),
            };
            foreach (var (which, gap) in steps)
            {
                var (own, ordinary) = all[which % all.Count];
                var number = ordinary.Keys.LastOrDefault() + gap;
                all.Add((own.Add(number, $"{all.Count}"), ordinary.Add(number, $"{all.Count}")));
            }

            Assert.All(all, one =>
            {
                Assert.Equal(one.Ordinary.ToList(), [.. one.Own.All]);
                Assert.Equal(one.Ordinary.Keys, one.Own.Keys);
                Assert.All(one.Ordinary, kept => Assert.Equal(kept.Value, one.Own[kept.Key]));
                Assert.False(one.Own.TryGetValue(one.Ordinary.Keys.LastOrDefault() + 1, out _));
            });
        });
    }

    [Fact]
    public void Two_threads_that_add_to_the_same_one_do_not_see_each_other()
    {
        for (var round = 1L; round <= 200; round++)
        {
            var shared = ByNumber<string>.Empty.Add(1, "a").Add(2, "b");
            string[] names = ["c", "d", "e", "f"];
            var added = new ByNumber<string>[names.Length];
            Parallel.For(0, names.Length, i => added[i] = shared.Add(3, names[i]).Add(4, names[i]));

            Assert.Equal(names, added.Select(one => one[3]));
            Assert.Equal(names, added.Select(one => one[4]));
            Assert.Equal(2, shared.Count);
        }
    }

    [Theory]
    [InlineData(6)]
    [InlineData(7)]
    public void A_number_that_is_not_the_highest_is_refused(long number) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ByNumber<string>.Empty.Add(7, "a").Add(number, "b"));

    [Fact]
    public void A_number_without_a_value_is_named()
    {
        var refused = Assert.Throws<KeyNotFoundException>(() => ByNumber<string>.Empty.Add(7, "a")[5]);
        Assert.Contains("5", refused.Message, StringComparison.Ordinal);
    }
}
