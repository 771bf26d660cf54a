using System.Buffers.Text;
using System.Security.Cryptography;
using ShopJobs.Web.Components.Summaries;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class CustomerTokenTests
{
    [Fact]
    public void Holds_128_random_bits_and_is_never_the_same()
    {
        var tokens = Enumerable.Range(0, 1000).Select(_ => CustomerToken.New()).ToList();

        Assert.Equal(tokens.Count, tokens.Distinct().Count());
        Assert.All(tokens, token => Assert.Equal(16, Base64Url.DecodeFromChars(token).Length));
        var ones = tokens.SelectMany(token => Base64Url.DecodeFromChars(token)).Sum(part => (long)byte.PopCount(part));
        Assert.InRange(ones, 64_000 - 900, 64_000 + 900); // 128,000 fair bits: five standard deviations are 894
    }

    [Fact]
    public void Only_its_hash_is_kept()
    {
        var token = CustomerToken.New();

        Assert.Equal(SHA256.HashData(Base64Url.DecodeFromChars(token)), CustomerToken.HashOf(token));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("short")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAB")] // spare bits set: another writing of the same secret
    [InlineData("AAAAAAAAAAAAAAAAAAAAA=")]
    [InlineData("AAAAAAAAAAAAAAAAAAAA+A")]
    public void Anything_else_has_no_hash(string? text) => Assert.Null(CustomerToken.HashOf(text));
}
