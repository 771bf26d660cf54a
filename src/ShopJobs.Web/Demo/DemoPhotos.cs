using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Data.Logbook;
using SkiaSharp;

namespace ShopJobs.Web.Demo;

/// <summary>Photographs of the demo shop: drawings of a car in its colour, taken by the same command as any picture.</summary>
internal static class DemoPhotos
{
    /// <summary>The views that are taken; three are left to be taken.</summary>
    public static IReadOnlyList<CarView> Views { get; } = [CarView.Front, CarView.FrontRight, CarView.Right, CarView.Rear, CarView.Left];

    private const int Wide = 960;
    private const int High = 720;
    private const float Ground = 560;
    private static readonly SKColor Floor = SKColor.Parse("#C9C4B8");
    private static readonly SKColor Wall = SKColor.Parse("#E7E3DA");
    private static readonly SKColor Dark = SKColor.Parse("#22272B");
    private static readonly SKColor Glass = SKColor.Parse("#5E6B74");
    private static readonly SKColor Lamp = SKColor.Parse("#F4E9B8");
    private static readonly SKColor Tail = SKColor.Parse("#B3261E");

    /// <summary>Takes them.</summary>
    public static async Task TakeAsync(DemoTablet tablet, CarId car, string colour)
    {
        foreach (var view in Views)
        {
            var photo = NewContent.Of(Draw(view, SKColor.Parse(CarColours.Of(colour) ?? "#83888C")));
            await tablet.DoAsync(car, new TakePhoto(photo.Digest, view), [photo]);
        }
    }

    /// <summary>A car as it is seen from there, as a JPEG.</summary>
    internal static byte[] Draw(CarView view, SKColor colour)
    {
        using var picture = new SKBitmap(Wide, High, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(picture))
        {
            canvas.Clear(Wall);
            Fill(canvas, Floor, 0, Ground - 30, Wide, High);
            switch (view)
            {
                case CarView.Front or CarView.Rear:
                    End(canvas, colour, view == CarView.Front ? Lamp : Tail, 280, 680);
                    break;
                case CarView.Right or CarView.Left:
                    Side(canvas, colour, noseRight: view == CarView.Right, 130, 830);
                    break;
                default:
                    // A corner: the side, cut short by the end that is nearer.
                    var (left, lamp) = (view is CarView.FrontLeft or CarView.RearRight, view is CarView.FrontRight or CarView.FrontLeft ? Lamp : Tail);
                    Side(canvas, colour, noseRight: view is CarView.FrontRight or CarView.RearRight, left ? 330 : 100, left ? 860 : 630);
                    End(canvas, colour, lamp, left ? 110 : 560, left ? 400 : 850);
                    break;
            }
        }

        using var image = SKImage.FromBitmap(picture);
        using var jpeg = image.Encode(SKEncodedImageFormat.Jpeg, 85);
        return jpeg.ToArray();
    }

    private static void End(SKCanvas canvas, SKColor colour, SKColor lamp, float left, float right)
    {
        var part = (right - left) / 20;
        Fill(canvas, Dark, left, Ground - 90, left + (3 * part), Ground);
        Fill(canvas, Dark, right - (3 * part), Ground - 90, right, Ground);
        Shape(canvas, colour, (left + (4 * part), 250), (right - (4 * part), 250), (right - part, 380), (right, Ground - 50), (left, Ground - 50), (left + part, 380));
        Shape(canvas, Glass, (left + (5 * part), 275), (right - (5 * part), 275), (right - (3 * part), 375), (left + (3 * part), 375));
        Fill(canvas, lamp, left + part, 410, left + (5 * part), 450);
        Fill(canvas, lamp, right - (5 * part), 410, right - part, 450);
    }

    private static void Side(SKCanvas canvas, SKColor colour, bool noseRight, float left, float right)
    {
        float At(float part) => noseRight ? left + (part * (right - left)) : right - (part * (right - left));
        Shape(canvas, colour, (At(0), 400), (At(.12f), 380), (At(.26f), 270), (At(.58f), 270), (At(.74f), 380), (At(.97f), 410), (At(1), Ground - 50), (At(0), Ground - 50));
        Shape(canvas, Glass, (At(.18f), 380), (At(.28f), 295), (At(.56f), 295), (At(.68f), 380));
        foreach (var wheel in new[] { .2f, .8f })
        {
            Round(canvas, Dark, At(wheel), Ground - 55, 62);
            Round(canvas, Floor, At(wheel), Ground - 55, 32);
        }
    }

    private static void Fill(SKCanvas canvas, SKColor colour, float left, float top, float right, float bottom) =>
        Shape(canvas, colour, (left, top), (right, top), (right, bottom), (left, bottom));

    private static void Round(SKCanvas canvas, SKColor colour, float x, float y, float radius)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true };
        canvas.DrawCircle(x, y, radius, paint);
    }

    private static void Shape(SKCanvas canvas, SKColor colour, params ReadOnlySpan<(float X, float Y)> corners)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true };
        using var drawn = new SKPathBuilder();
        drawn.MoveTo(corners[0].X, corners[0].Y);
        foreach (var (x, y) in corners[1..])
        {
            drawn.LineTo(x, y);
        }

        drawn.Close();
        using var path = drawn.Detach();
        canvas.DrawPath(path, paint);
    }
}
