using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Tests.Accounts;

public sealed class LocalUrlTests
{
    [Theory]
    [InlineData("/")]
    [InlineData("/cars?x=1&y=/2")]
    [InlineData("/jobs/1#step")]
    public void Path_of_this_program_is_kept(string url) => Assert.Equal(url, LocalUrl.OrFloor(url));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("cars")]
    [InlineData("~/cars")]
    [InlineData("//host")]
    [InlineData("/\\host")]
    [InlineData("/a\\b")]
    [InlineData("/\n/host")]
    [InlineData("http://host")]
    public void Anything_else_becomes_the_floor(string? url) => Assert.Equal("/", LocalUrl.OrFloor(url));

    [Fact]
    public void Huge_path_becomes_the_floor() => Assert.Equal("/", LocalUrl.OrFloor("/" + new string('a', 10_000)));
}
