using SkiaSharp;

namespace ShopJobs.Web.Components.Photos;

/// <summary>What became of a file: the picture to keep, or why there is none.</summary>
/// <param name="Jpeg">The picture; empty where it was refused.</param>
public sealed record MadePicture(byte[] Jpeg, PhotoRefusal? Refusal);

/// <summary>
/// Turns a file that was sent into the picture that is kept: known by its first bytes, measured by its header, decoded, turned upright,
/// scaled down and written anew. So nothing of the file is kept but what it shows: no place, no camera, no name.
/// </summary>
public static class Picture
{
    /// <summary>Most bytes of a file.</summary>
    public const int MostBytes = 15 * 1024 * 1024;

    /// <summary>Most pixels that are decoded.</summary>
    public const long MostPixels = 50_000_000;

    /// <summary>The longer side of a picture that is kept, at most, in pixels.</summary>
    public const int LongSide = 2048;

    /// <summary>The longer side of a small picture, at most, in pixels.</summary>
    public const int SmallSide = 320;

    private const int Quality = 85;
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF];
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The picture to keep of a file, whatever its name says.</summary>
    public static MadePicture Make(ReadOnlySpan<byte> file) => Make(file, LongSide);

    /// <summary>The small picture of one that is kept.</summary>
    public static MadePicture MakeSmall(ReadOnlySpan<byte> kept) => Make(kept, SmallSide);

    /// <summary>True for bytes that begin as every kept picture does. No text does: these are not UTF-8.</summary>
    internal static bool IsKept(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Jpeg);

    private static MadePicture Make(ReadOnlySpan<byte> file, int longSide)
    {
        if (!BeginsLikeOne(file))
        {
            return No(PhotoRefusal.NoPhotograph);
        }

        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null)
        {
            return No(PhotoRefusal.Broken);
        }

        return codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png or SKEncodedImageFormat.Webp) ? No(PhotoRefusal.NoPhotograph)
            : (long)codec.Info.Width * codec.Info.Height > MostPixels ? No(PhotoRefusal.TooManyPixels)
            : Decode(codec, longSide);
    }

    private static bool BeginsLikeOne(ReadOnlySpan<byte> file) =>
        file.StartsWith(Jpeg) || file.StartsWith(Png) || (file.Length > 12 && file.StartsWith("RIFF"u8) && file[8..].StartsWith("WEBP"u8));

    private static MadePicture Decode(SKCodec codec, int longSide)
    {
        // In eighths, as JPEG is decoded: never below what is wanted.
        var wanted = Math.Min(1f, (float)longSide / Math.Max(codec.Info.Width, codec.Info.Height));
        var size = codec.GetScaledDimensions(MathF.Ceiling(wanted * 8) / 8);
        using var colours = SKColorSpace.CreateSrgb();
        using var decoded = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, colours));
        return codec.GetPixels(decoded.Info, decoded.GetPixels()) == SKCodecResult.Success
            ? new MadePicture(Write(decoded, codec.EncodedOrigin, longSide), null)
            : No(PhotoRefusal.Broken);
    }

    private static byte[] Write(SKBitmap decoded, SKEncodedOrigin origin, int longSide)
    {
        var lies = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var (width, height) = lies ? (decoded.Height, decoded.Width) : (decoded.Width, decoded.Height);
        var scale = Math.Min(1d, (double)longSide / Math.Max(width, height));
        var (wide, high) = (Math.Max(1, (int)Math.Round(width * scale)), Math.Max(1, (int)Math.Round(height * scale)));
        using var upright = new SKBitmap(new SKImageInfo(wide, high, SKColorType.Rgba8888, SKAlphaType.Opaque, decoded.ColorSpace));
        using (var canvas = new SKCanvas(upright))
        using (var image = SKImage.FromBitmap(decoded))
        {
            canvas.Clear(SKColors.White);
            canvas.Scale((float)wide / width, (float)high / height);
            canvas.Concat(Upright(origin, width, height));
            canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }

        using var made = SKImage.FromBitmap(upright);
        using var jpeg = made.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return jpeg.ToArray();
    }

    // From the pixels as they lie in the file to the picture as it is looked at, width by height: Exif 2.32, tag 0x0112, orientation 1 to 8.
    private static SKMatrix Upright(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, width, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, width, -1, 0, height, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, height, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    private static MadePicture No(PhotoRefusal refusal) => new([], refusal);
}
