using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Photos;

/// <summary>Takes a photograph in: the picture is made, then it and its entry are written in one transaction.</summary>
public sealed class PhotoDesk(CarDesk desk, CarRows cars, PictureQueue queue)
{
    // Stands for any picture: what a request is known by leaves pictures and texts out.
    private static readonly ContentDigest Any = ContentDigest.Of([], []);

    /// <summary>Records what was sent, or says why not. Sent again under its id it gets its first answer.</summary>
    internal async Task<PhotoAnswer> TakeAsync(CarId car, Present here, SentPhoto sent, CancellationToken cancellation)
    {
        if (!here.May(Right.Record))
        {
            return PhotoAnswer.No(PhotoRefusal.NoRight);
        }

        if (sent.Command is not { } id || !sent.KnowsItsView)
        {
            return PhotoAnswer.No(PhotoRefusal.OutOfDate);
        }

        if (await cars.FindAsync(car, cancellation) is null)
        {
            return PhotoAnswer.No(PhotoRefusal.NoCar);
        }

        var caption = sent.Caption.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(sent.Caption));
        if (desk.Earlier(car, id, new TakePhoto(Any, sent.View) { Caption = caption?.Digest }) is { } earlier)
        {
            return PhotoAnswer.Of(earlier);
        }

        var made = await queue.InTurnAsync(() => Picture.Make(sent.File), cancellation);
        if (made.Refusal is { } refusal)
        {
            return PhotoAnswer.No(refusal);
        }

        var photo = NewContent.Of(made.Jpeg);
        var command = new TakePhoto(photo.Digest, sent.View) { Caption = caption?.Digest };
        return PhotoAnswer.Of(await desk.RunAsync(car, id, here, command, caption is null ? [photo] : [photo, caption], cancellation: CancellationToken.None));
    }
}
