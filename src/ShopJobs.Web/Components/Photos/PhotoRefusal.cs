namespace ShopJobs.Web.Components.Photos;

/// <summary>Why a photograph was not taken in.</summary>
public enum PhotoRefusal
{
    /// <summary>It is nothing, or anything but a picture of the three kinds.</summary>
    NoPhotograph,

    /// <summary>More bytes than are read.</summary>
    TooLarge,

    /// <summary>More pixels than are decoded.</summary>
    TooManyPixels,

    /// <summary>It begins like a picture and can't be read to its end.</summary>
    Broken,

    /// <summary>More written to it than fits.</summary>
    LongCaption,

    /// <summary>Every place where pictures wait is taken.</summary>
    Busy,

    /// <summary>The form did not arrive whole.</summary>
    NotWhole,

    /// <summary>The form's token or its fields are not of this page as it is now.</summary>
    OutOfDate,

    /// <summary>Whoever is signed in may not record work.</summary>
    NoRight,

    /// <summary>There is no such car.</summary>
    NoCar,

    /// <summary>The logbook did not take it.</summary>
    NotRecorded,
}

/// <summary>What is said about each, and whether the same picture may be sent again.</summary>
internal static class PhotoRefusals
{
    public static string Words(this PhotoRefusal refusal) => refusal switch
    {
        PhotoRefusal.NoPhotograph => "That is no photograph. Take a picture with the camera, or pick a JPEG, PNG or WebP file.",
        PhotoRefusal.TooLarge => "That file is larger than 15 MB. Set the camera to fewer pixels, then take it again.",
        PhotoRefusal.TooManyPixels => "That picture has more than 50 million pixels. Set the camera to fewer, then take it again.",
        PhotoRefusal.Broken => "That picture is broken: it can't be read to its end. Take it again.",
        PhotoRefusal.LongCaption => "What it shows is longer than 120 letters. Shorten it, then pick the picture again.",
        PhotoRefusal.Busy => "Ten pictures are being saved just now. Wait a moment, then try again.",
        PhotoRefusal.NotWhole => "The picture did not arrive whole. Try again.",
        PhotoRefusal.OutOfDate => "This page was out of date. Load it again, then take the picture.",
        PhotoRefusal.NoRight => "Photographs are taken by somebody who may record work. Ask the lead for that right.",
        PhotoRefusal.NoCar => "This car is not in the book. Go back to the floor and pick it there.",
        PhotoRefusal.NotRecorded => "The logbook did not take it just now. Try again in a few minutes.",
        _ => throw new ArgumentOutOfRangeException(nameof(refusal), refusal, "Not a reason."),
    };

    public static int Status(this PhotoRefusal refusal) => refusal switch
    {
        PhotoRefusal.TooLarge => StatusCodes.Status413PayloadTooLarge,
        PhotoRefusal.Busy or PhotoRefusal.NotRecorded => StatusCodes.Status503ServiceUnavailable,
        PhotoRefusal.OutOfDate or PhotoRefusal.NoRight => StatusCodes.Status403Forbidden,
        PhotoRefusal.NoCar => StatusCodes.Status404NotFound,
        _ => StatusCodes.Status422UnprocessableEntity,
    };

    public static bool MayTryAgain(this PhotoRefusal refusal) => refusal is PhotoRefusal.Busy or PhotoRefusal.NotWhole or PhotoRefusal.NotRecorded;
}
