using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

public class ContentDigestTests
{
    // Source: FIPS 180-4's one-block example, SHA-256 of "abc", here as salt "a" and bytes "bc".
    private const string Abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    [Fact]
    public void Is_the_digest_of_salt_then_bytes() =>
        Assert.Equal(Abc, ContentDigest.Of("a"u8, "bc"u8).ToString());

    [Fact]
    public void The_same_words_under_another_salt_have_another_digest() =>
        Assert.NotEqual(ContentDigest.Of([1], "R. Ortega"u8), ContentDigest.Of([2], "R. Ortega"u8));

    [Fact]
    public void Written_and_read_back_it_is_the_same()
    {
        Assert.True(ContentDigest.TryParse(Abc, out var read));
        Assert.Equal(ContentDigest.Of("a"u8, "bc"u8), read);
        Assert.Equal(read, ContentDigest.FromBytes(read.ToArray()));
    }
}
