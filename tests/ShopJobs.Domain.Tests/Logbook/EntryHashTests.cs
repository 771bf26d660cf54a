using System.Text;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

public class EntryHashTests
{
    // Source of both values: GNU coreutils sha256sum over 32 zero bytes and "abc", then over that digest and "abc".
    private const string First = "365aa7d8f7f9402c4b9434502b4cc89ddb09fe50d7cd95b493b834c62d5a5370";
    private const string Second = "0f25de757a05fdcd69becaeb50675b3d752b78fd31929cdbc8352b5defb683a1";

    [Fact]
    public void First_entry_is_chained_to_thirty_two_zero_bytes() =>
        Assert.Equal(First, EntryHash.BeforeFirst.Next("abc"u8).ToString());

    [Fact]
    public void Each_entry_is_chained_to_the_one_before() =>
        Assert.Equal(Second, EntryHash.BeforeFirst.Next("abc"u8).Next("abc"u8).ToString());

    [Fact]
    public void A_long_envelope_is_hashed_whole()
    {
        var bytes = Encoding.UTF8.GetBytes(new string('x', 5000));
        var hash = EntryHash.BeforeFirst.Next(bytes);
        bytes[^1] = (byte)'y';
        Assert.NotEqual(hash, EntryHash.BeforeFirst.Next(bytes));
    }

    [Fact]
    public void Written_and_read_back_it_is_the_same()
    {
        var hash = EntryHash.BeforeFirst.Next("abc"u8);
        Assert.True(EntryHash.TryParse(First.ToUpperInvariant(), out var read));
        Assert.Equal(hash, read);
        Assert.Equal(hash, new EntryHash(hash.ToArray()));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("00")]
    [InlineData("zz00000000000000000000000000000000000000000000000000000000000000")]
    public void Other_text_is_no_hash(string? text) => Assert.False(EntryHash.TryParse(text, out _));
}
