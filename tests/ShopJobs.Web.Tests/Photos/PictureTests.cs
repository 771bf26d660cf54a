using System.Text;
using ShopJobs.Web.Components.Photos;
using SkiaSharp;

namespace ShopJobs.Web.Tests.Photos;

/// <summary>What is kept of a file: what it shows, and nothing else.</summary>
public sealed class PictureTests
{
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void Each_of_the_three_kinds_is_kept_as_a_JPEG(SKEncodedImageFormat format)
    {
        var made = Picture.Make(TestPictures.RedAndBlue(64, 32, format));

        Assert.Null(made.Refusal);
        using var kept = SKBitmap.Decode(made.Jpeg);
        Assert.Equal((64, 32), (kept.Width, kept.Height));
        Assert.True(Picture.IsKept(made.Jpeg));
        IsRed(kept.GetPixel(8, 16));
        IsBlue(kept.GetPixel(56, 16));
    }

    [Fact]
    public void A_picture_that_says_where_it_was_taken_is_turned_upright_and_says_it_no_more()
    {
        var sent = TestPictures.WithPlace(TestPictures.RedAndBlue(64, 32));
        Assert.Contains((byte)0xE1, TestPictures.Markers(sent));
        using (var data = SKData.CreateCopy(sent))
        using (var codec = SKCodec.Create(data))
        {
            Assert.Equal(SKEncodedOrigin.RightTop, codec.EncodedOrigin);
        }

        var made = Picture.Make(sent);

        Assert.DoesNotContain((byte)0xE1, TestPictures.Markers(made.Jpeg));
        Assert.Equal(-1, made.Jpeg.AsSpan().IndexOf("Exif"u8));
        using var kept = SKBitmap.Decode(made.Jpeg);
        Assert.Equal((32, 64), (kept.Width, kept.Height));
        IsRed(kept.GetPixel(16, 8));
        IsBlue(kept.GetPixel(16, 56));
    }

    [Theory]
    [InlineData(4000, 1000, 2048, 512)]
    [InlineData(1000, 4000, 512, 2048)]
    [InlineData(2048, 2048, 2048, 2048)]
    [InlineData(2100, 1, 2048, 1)]
    public void A_large_one_is_scaled_down_and_a_small_one_is_left(int width, int height, int keptWidth, int keptHeight)
    {
        using var kept = SKBitmap.Decode(Picture.Make(TestPictures.RedAndBlue(width, height)).Jpeg);

        Assert.Equal((keptWidth, keptHeight), (kept.Width, kept.Height));
    }

    [Fact]
    public void The_small_one_is_320_pixels_on_its_longer_side()
    {
        using var small = SKBitmap.Decode(Picture.MakeSmall(Picture.Make(TestPictures.RedAndBlue(4000, 3000)).Jpeg).Jpeg);

        Assert.Equal((320, 240), (small.Width, small.Height));
    }

    [Theory]
    [InlineData("")]
    [InlineData("MZ\u0090\0\u0003")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>")]
    [InlineData("<!DOCTYPE html><title>front.jpg</title>")]
    [InlineData("GIF89a\u0001\0\u0001\0")]
    [InlineData("RIFF\0\0\0\0WAVE")]
    [InlineData("RIFF")]
    public void Anything_else_is_no_photograph(string file) =>
        Assert.Equal(PhotoRefusal.NoPhotograph, Picture.Make(Encoding.Latin1.GetBytes(file)).Refusal);

    [Fact]
    public void A_header_of_200_million_pixels_is_refused_before_one_is_decoded()
    {
        var file = TestPictures.PngHeader(20_000, 10_000);
        Picture.Make(file);
        var before = GC.GetAllocatedBytesForCurrentThread();

        var refusal = Picture.Make(file).Refusal;

        // The same file within the limit is broken: it holds no pixels. So the size was looked at first.
        Assert.Equal(PhotoRefusal.TooManyPixels, refusal);
        Assert.Equal(PhotoRefusal.Broken, Picture.Make(TestPictures.PngHeader(200, 100)).Refusal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 64 * 1024);
    }

    [Theory]
    [InlineData(7_000, 7_142, PhotoRefusal.Broken)]
    [InlineData(7_000, 7_143, PhotoRefusal.TooManyPixels)]
    [InlineData(100_000, 100_000, PhotoRefusal.TooManyPixels)]
    public void The_limit_is_50_million_pixels(uint width, uint height, PhotoRefusal refusal) =>
        Assert.Equal(refusal, Picture.Make(TestPictures.PngHeader(width, height)).Refusal);

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void One_that_breaks_off_is_broken(SKEncodedImageFormat format)
    {
        var whole = Noise(400, 300, format);

        Assert.Null(Picture.Make(whole).Refusal);
        Assert.Equal(PhotoRefusal.Broken, Picture.Make(whole.AsSpan(0, whole.Length / 2)).Refusal);
        Assert.Equal(PhotoRefusal.Broken, Picture.Make(whole.AsSpan(0, 16)).Refusal);
    }

    [Fact]
    public async Task Pictures_are_decoded_one_at_a_time()
    {
        using var queue = new PictureQueue();
        var (inside, most) = (0, 0);

        await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => queue.InTurnAsync(() =>
        {
            most = Math.Max(most, Interlocked.Increment(ref inside));
            for (var turn = 0; turn < 1_000; turn++)
            {
                Thread.Yield();
            }

            return Interlocked.Decrement(ref inside);
        })));

        Assert.Equal((0, 1), (inside, most));
    }

    [Fact]
    public void Ten_may_wait_and_a_place_that_is_given_back_is_free()
    {
        using var queue = new PictureQueue();
        var places = Enumerable.Range(0, PictureQueue.Places).Select(_ => queue.TakePlace()).ToList();

        Assert.DoesNotContain(null, places);
        Assert.Null(queue.TakePlace());
        places[3]!.Dispose();
        places[3]!.Dispose();

        Assert.NotNull(queue.TakePlace());
        Assert.Null(queue.TakePlace());
    }

    // What can't be packed into a few bytes.
    private static byte[] Noise(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        var random = new Random(7);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                bitmap.SetPixel(x, y, new SKColor((byte)random.Next(256), (byte)random.Next(256), (byte)random.Next(256)));
            }
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(format, 95);
        return data.ToArray();
    }

    private static void IsRed(SKColor colour) => Assert.True(colour.Red > 220 && colour.Blue < 40, colour.ToString());

    private static void IsBlue(SKColor colour) => Assert.True(colour.Blue > 220 && colour.Red < 40, colour.ToString());
}
