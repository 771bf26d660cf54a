using System.Security.Cryptography;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class ShownDigestTests
{
    [Fact]
    public void Digest_is_sha_256_over_length_and_text_of_each_line()
    {
        byte[] bytes = [0, 0, 0, 4, .. "SIGN"u8, 0, 0, 0, 2, .. "24"u8];

        Assert.Equal(SHA256.HashData(bytes), ShownDigest.Of("SIGN", ["24"]));
    }

    [Fact]
    public void Lines_cut_differently_give_different_digests()
    {
        Assert.NotEqual(ShownDigest.Of("SIGN", ["24", "N.m"]), ShownDigest.Of("SIGN", ["24N.m"]));
        Assert.NotEqual(ShownDigest.Of("SIGN", ["24", ""]), ShownDigest.Of("SIGN", ["24"]));
        Assert.NotEqual(ShownDigest.Of("", ["SIGN"]), ShownDigest.Of("SIGN", []));
    }
}
