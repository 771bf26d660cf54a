using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Components.Photos;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;
using SkiaSharp;

namespace ShopJobs.Web.Tests.Photos;

/// <summary>Photographs are sent to one address, with the form's token, by somebody who may record; all else is refused in words and writes nothing.</summary>
public sealed class PhotoEndpointTests : IDisposable
{
    private readonly OpenShop shop = new();
    private Browser browser = default!;
    private CarId car;
    private string token = "";

    private CarState State => shop.Services.GetRequiredService<CarDesk>().Read(car, null).State;

    private string Address => Links.Photos(car);

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_picture_is_recorded_with_its_view_and_caption_and_read_again_whole_and_small()
    {
        await OpenAsync();

        var answer = await SendAsync(TestPictures.WithPlace(TestPictures.RedAndBlue(4000, 2000)), view: "RearLeft", caption: "  Dent in the sill ");

        Assert.Equal((HttpStatusCode.OK, true), (answer.Status, answer.Body["saved"]!.GetValue<bool>()));
        var taken = Assert.Single(State.Photos);
        Assert.Equal((answer.Body["number"]!.GetValue<long>(), CarView.RearLeft), (taken.Number, taken.Fact.View!.Value));
        var written = (await browser.GetAsync(Links.Logbook(car))).Page.QuerySelector(".entry-what")!;
        Assert.Equal(Links.Photo(taken.Fact.Photo), written.QuerySelector("a.entry-photo")!.GetAttribute("href"));
        Assert.Contains("Photographed the car: rear left.", written.TextContent, StringComparison.Ordinal);
        Assert.Contains("Caption: “Dent in the sill”", written.TextContent, StringComparison.Ordinal);
        Assert.Equal("Dent in the sill", shop.Services.GetRequiredService<CarEntries>().Texts([taken.Fact.Caption!.Value]).Values.Single());
        var whole = await GetAsync(Links.Photo(taken.Fact.Photo));
        Assert.Equal("image/jpeg", whole.Content.Headers.ContentType!.ToString());
        Assert.True(whole.Headers.CacheControl!.Private);
        Assert.False(whole.Headers.CacheControl.NoStore);
        Assert.Equal("nosniff", Assert.Single(whole.Headers.GetValues("X-Content-Type-Options")));
        var bytes = await whole.Content.ReadAsByteArrayAsync();
        Assert.DoesNotContain((byte)0xE1, TestPictures.Markers(bytes));
        Assert.Equal((1024, 2048), SizeOf(bytes));
        var small = await GetAsync(Links.SmallPhoto(taken.Fact.Photo));
        Assert.Equal((160, 320), SizeOf(await small.Content.ReadAsByteArrayAsync()));
        Assert.Equal("image/jpeg", (await GetAsync(Links.SmallPhoto(taken.Fact.Photo))).Content.Headers.ContentType!.ToString());
        Assert.Empty(new LogbookVerifier(shop.Services.GetRequiredService<DataFolder>().Database, EntryCodec.KeysOf).Verify().Problems);
    }

    [Fact]
    public async Task Sent_again_under_its_id_it_gets_its_first_answer_and_is_kept_once()
    {
        await OpenAsync();
        var id = Guid.NewGuid();
        var first = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front", command: id);
        var rows = await ContentRowsAsync();

        var again = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front", command: id);

        Assert.Equal((HttpStatusCode.OK, true), (again.Status, again.Body["repeated"]!.GetValue<bool>()));
        Assert.Equal(first.Body["number"]!.GetValue<long>(), again.Body["number"]!.GetValue<long>());
        Assert.Single(State.Photos);
        Assert.Equal(rows, await ContentRowsAsync());
        var other = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Rear", command: id);
        Assert.Contains("used for something else", other.Words, StringComparison.Ordinal);
        Assert.Single(State.Photos);
    }

    public static TheoryData<string, string> NoPhotographs => new()
    {
        { "nothing", "" },
        { "a program by a picture's name", "MZ\u0090\0\u0003\0\0\0" },
        { "a drawing with script", "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"/>" },
        { "a page", "<!DOCTYPE html><script>alert(1)</script>" },
    };

    [Theory]
    [MemberData(nameof(NoPhotographs))]
    public async Task What_is_no_photograph_is_refused_whatever_its_name_says(string what, string bytes)
    {
        await OpenAsync();

        var answer = await SendAsync(Encoding.Latin1.GetBytes(bytes), view: "Front");

        Assert.True(HttpStatusCode.UnprocessableEntity == answer.Status, what);
        Assert.StartsWith("That is no photograph", answer.Words, StringComparison.Ordinal);
        Assert.False(answer.Body["tryAgain"]!.GetValue<bool>());
        await NothingWasWrittenAsync();
    }

    [Fact]
    public async Task A_broken_one_and_one_of_too_many_pixels_are_refused()
    {
        await OpenAsync();
        var whole = TestPictures.RedAndBlue(640, 480, SKEncodedImageFormat.Png);

        Assert.Contains("broken", (await SendAsync(whole[..(whole.Length - 40)], view: "Front")).Words, StringComparison.Ordinal);
        Assert.Contains("more than 50 million pixels", (await SendAsync(TestPictures.PngHeader(20_000, 10_000), view: "Front")).Words, StringComparison.Ordinal);
        await NothingWasWrittenAsync();
    }

    [Theory]
    [InlineData(15 * 1024 * 1024 + 1, true)]
    [InlineData(17 * 1024 * 1024, true)]
    [InlineData(17 * 1024 * 1024, false)]
    public async Task A_file_over_15_MB_is_refused_by_its_length_or_while_it_is_read(int length, bool saysItsLength)
    {
        await OpenAsync();
        var file = new byte[length];
        TestPictures.RedAndBlue(64, 32).CopyTo(file, 0);

        var answer = await SendAsync(file, view: "Front", chunked: !saysItsLength);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.Status);
        Assert.Contains("larger than 15 MB", answer.Words, StringComparison.Ordinal);
        await NothingWasWrittenAsync();
    }

    [Fact]
    public async Task Without_the_forms_token_or_with_a_view_that_is_none_nothing_is_taken()
    {
        await OpenAsync();
        var good = token;

        token = "";
        Assert.Equal(HttpStatusCode.Forbidden, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front")).Status);
        token = good;
        var answer = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Underneath");
        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("out of date", answer.Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "3")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front", command: Guid.Empty)).Status);
        await NothingWasWrittenAsync();
    }

    [Fact]
    public async Task Nobody_sends_or_sees_pictures_who_is_not_signed_in()
    {
        await OpenAsync();
        await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front");
        var picture = Links.Photo(State.Photos[0].Fact.Photo);
        var stranger = shop.NewBrowser();

        Assert.Equal(HttpStatusCode.Redirect, (await stranger.GetAsync(picture)).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await stranger.GetAsync($"{picture}/small")).Status);
        browser = stranger;
        Assert.Equal(HttpStatusCode.Unauthorized, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Rear")).Status);
        Assert.Single(State.Photos);
    }

    [Fact]
    public async Task Whoever_may_not_record_is_told_and_sees_no_form()
    {
        await OpenAsync();
        await shop.RowsAsync(rows => rows.Rights.Where(right => right.Right == Right.Record).ExecuteDeleteAsync());

        var answer = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front");

        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("may record work", answer.Words, StringComparison.Ordinal);
        Assert.Empty((await browser.GetAsync(Address)).Page.QuerySelectorAll("form[data-photo]"));
        await NothingWasWrittenAsync();
    }

    [Fact]
    public async Task A_car_that_is_not_in_the_book_has_no_photographs()
    {
        await OpenAsync();

        Assert.Equal(HttpStatusCode.NotFound, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front", address: Links.Photos(new CarId(Guid.NewGuid())))).Status);
    }

    [Fact]
    public async Task With_every_place_taken_it_says_so_and_may_be_sent_again()
    {
        await OpenAsync();
        var queue = shop.Services.GetRequiredService<PictureQueue>();
        var places = Enumerable.Range(0, PictureQueue.Places).Select(_ => queue.TakePlace()).ToList();

        var answer = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front");
        Assert.Equal((HttpStatusCode.ServiceUnavailable, true), (answer.Status, answer.Body["tryAgain"]!.GetValue<bool>()));
        Assert.Contains("Wait a moment", answer.Words, StringComparison.Ordinal);
        places[0]!.Dispose();

        Assert.Equal(HttpStatusCode.OK, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front")).Status);
        Assert.Equal(HttpStatusCode.OK, (await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Rear")).Status);
    }

    [Fact]
    public async Task A_form_that_breaks_off_a_caption_too_long_and_no_form_at_all_are_refused()
    {
        await OpenAsync();

        Assert.Contains("longer than 120 letters", (await SendAsync(TestPictures.RedAndBlue(64, 32), caption: new string('x', 121))).Words, StringComparison.Ordinal);
        Assert.Contains("longer than 120 letters", (await SendAsync(TestPictures.RedAndBlue(64, 32), caption: new string('x', 10_000))).Words, StringComparison.Ordinal);
        using var cut = new ByteArrayContent(Encoding.ASCII.GetBytes("--b\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\n\r\nabc"));
        cut.Headers.ContentType = MediaTypeHeaderValue.Parse("multipart/form-data; boundary=b");
        var broken = await SendAsync(cut, Address);
        Assert.Contains("did not arrive whole", broken.Words, StringComparison.Ordinal);
        Assert.True(broken.Body["tryAgain"]!.GetValue<bool>());
        using var text = new StringContent("{}", Encoding.UTF8, "application/json");
        Assert.Contains("did not arrive whole", (await SendAsync(text, Address)).Words, StringComparison.Ordinal);
        await NothingWasWrittenAsync();
    }

    [Fact]
    public async Task Without_script_the_form_leads_back_to_the_page_with_what_was_said()
    {
        await OpenAsync();

        var good = await SendAsync(TestPictures.RedAndBlue(64, 32), view: "Front", script: false);
        Assert.Equal((HttpStatusCode.Redirect, $"{Address}?taken={State.Photos[0].Number}"), (good.Status, good.Location));
        var page = await browser.GetAsync(good.Location!);
        Assert.Contains("1 of 8", page.Page.QuerySelector(".photo-count")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Recorded.", page.Page.QuerySelector(".answer-good")!.TextContent, StringComparison.Ordinal);

        var bad = await SendAsync("<html>"u8.ToArray(), view: "Rear", script: false);
        Assert.Equal($"{Address}?said=NoPhotograph", bad.Location);
        Assert.Contains("That is no photograph", (await browser.GetAsync(bad.Location!)).Alert, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", (await browser.GetAsync($"{Address}?said=<b>1</b>")).Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_pictures_are_given_by_their_digest()
    {
        await OpenAsync();
        await SendAsync(TestPictures.RedAndBlue(64, 32), caption: "A dent");
        var photo = State.Photos[0].Fact;

        Assert.Equal(HttpStatusCode.OK, (await GetAsync(Links.Photo(photo.Photo))).StatusCode);
        foreach (var address in new[] { Links.Photo(photo.Caption!.Value), Links.Photo(new ContentDigest(new string('0', 64))), "/photos/front", "/photos/front/small" })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await GetAsync(address)).StatusCode);
        }
    }

    private async Task OpenAsync()
    {
        browser = await shop.OpenDemoAsync();
        await browser.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);
        car = await shop.RowsAsync(rows => rows.Cars.Where(row => row.Name == DemoCars.Grey.Name).Select(row => row.Id).SingleAsync());
        token = (await browser.GetAsync(Address)).Page.QuerySelector("form[data-photo=Front] input[name=__RequestVerificationToken]")!.GetAttribute("value")!;
    }

    private async Task NothingWasWrittenAsync()
    {
        Assert.Empty(State.Photos);
        Assert.Equal(0, State.Number);
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync(Address)).Status);
    }

    private Task<int> ContentRowsAsync() => shop.RowsAsync(async rows => (await rows.Database.SqlQuery<int>($"SELECT count(*) AS Value FROM content").ToListAsync())[0]);

    private async Task<Sent> SendAsync(
        byte[] file, string view = "", string caption = "", Guid? command = null, string? address = null, bool chunked = false, bool script = true)
    {
        using var form = new MultipartFormDataContent
        {
            { new StringContent(token), "__RequestVerificationToken" },
            { new StringContent((command ?? Guid.NewGuid()).ToString()), "command" },
            { new StringContent(view), "view" },
            { new StringContent(caption), "caption" },
            { new ByteArrayContent(file), "photo", "front.jpg" },
        };
        return await SendAsync(form, address ?? Address, chunked, script);
    }

    private async Task<Sent> SendAsync(HttpContent content, string address, bool chunked = false, bool script = true)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = chunked ? new Unmeasured(content) : content };
        if (script)
        {
            request.Headers.Add("Accept", "application/json");
        }

        using var response = await SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        return new Sent(response.StatusCode, response.Headers.Location?.ToString(), text.StartsWith('{') ? JsonNode.Parse(text)! : new JsonObject());
    }

    private async Task<HttpResponseMessage> GetAsync(string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        return await SendAsync(request);
    }

    private async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request)
    {
        var client = shop.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });
        if (browser.Cookies.Count > 0)
        {
            request.Headers.Add("Cookie", string.Join("; ", browser.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        }

        return await client.SendAsync(request);
    }

    private static (int Width, int Height) SizeOf(byte[] jpeg)
    {
        using var bitmap = SKBitmap.Decode(jpeg);
        return (bitmap.Width, bitmap.Height);
    }

    private sealed record Sent(HttpStatusCode Status, string? Location, JsonNode Body)
    {
        public string Words => string.Join(' ', Body["words"]!.AsArray().Select(word => word!.GetValue<string>()));
    }

    /// <summary>A body that does not say how long it is.</summary>
    private sealed class Unmeasured : HttpContent
    {
        private readonly HttpContent content;

        public Unmeasured(HttpContent content)
        {
            this.content = content;
            Headers.ContentType = content.Headers.ContentType;
        }

        protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context) => content.CopyToAsync(stream);

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
