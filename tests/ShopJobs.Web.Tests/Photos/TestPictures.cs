using System.Buffers.Binary;
using System.Text;
using SkiaSharp;

namespace ShopJobs.Web.Tests.Photos;

/// <summary>Files to send in: drawn ones, and ones written byte by byte.</summary>
internal static class TestPictures
{
    /// <summary>The left half red, the right half blue.</summary>
    public static byte[] RedAndBlue(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(bitmap))
        using (var blue = new SKPaint { Color = SKColors.Blue })
        {
            canvas.Clear(SKColors.Red);
            canvas.DrawRect(width / 2, 0, width - (width / 2), height, blue);
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(format, 95);
        return data.ToArray();
    }

    /// <summary>A JPEG with an Exif block behind its first marker: turned by 90 degrees, and taken at 48 degrees north.</summary>
    /// <remarks>Written by Exif 2.32, 4.5 to 4.6: tags 0x0112 and 0x8825 of the first directory, 1 and 2 of the GPS directory.</remarks>
    public static byte[] WithPlace(byte[] jpeg)
    {
        var tiff = new byte[88];
        "II*\0"u8.CopyTo(tiff);
        Write(tiff, 4, 8);
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(8), 2);
        Tag(tiff, 10, 0x0112, type: 3, count: 1, value: 6);
        Tag(tiff, 22, 0x8825, type: 4, count: 1, value: 38);
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(38), 2);
        Tag(tiff, 40, 1, type: 2, count: 2, value: 'N');
        Tag(tiff, 52, 2, type: 5, count: 3, value: 64);
        foreach (var (at, part) in new (int, uint)[] { (64, 48), (72, 12), (80, 30) })
        {
            Write(tiff, at, part);
            Write(tiff, at + 4, 1);
        }

        byte[] exif = [.. "Exif\0\0"u8, .. tiff];
        return [.. jpeg[..2], 0xFF, 0xE1, (byte)((exif.Length + 2) >> 8), (byte)(exif.Length + 2), .. exif, .. jpeg[2..]];
    }

    /// <summary>A PNG whose header says its size, with hardly any pixels behind it.</summary>
    public static byte[] PngHeader(uint width, uint height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteUInt32BigEndian(header, width);
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2);
        byte[] pixels = [0x78, 0x9C, 0x63, 0x60, 0x00, 0x00, 0x00, 0x02, 0x00, 0x01];
        return [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A, .. Chunk("IHDR", header), .. Chunk("IDAT", pixels), .. Chunk("IEND", [])];
    }

    /// <summary>The markers before the pixels of a JPEG, by their second byte: ITU-T T.81, B.1.1.</summary>
    public static IReadOnlyList<byte> Markers(byte[] jpeg)
    {
        var markers = new List<byte>();
        for (var at = 2; jpeg[at] == 0xFF && jpeg[at + 1] != 0xDA; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2)))
        {
            markers.Add(jpeg[at + 1]);
        }

        return markers;
    }

    private static void Tag(byte[] tiff, int at, ushort tag, ushort type, uint count, uint value)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(at), tag);
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(at + 2), type);
        Write(tiff, at + 4, count);
        Write(tiff, at + 8, value);
    }

    private static void Write(byte[] bytes, int at, uint value) => BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(at), value);

    private static byte[] Chunk(string kind, byte[] data)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(kind), .. data];
        var (length, check) = (new byte[4], new byte[4]);
        BinaryPrimitives.WriteUInt32BigEndian(length, (uint)data.Length);
        BinaryPrimitives.WriteUInt32BigEndian(check, Check(named));
        return [.. length, .. named, .. check];
    }

    // CRC-32 as PNG has it: W3C PNG, annex D.
    private static uint Check(byte[] bytes)
    {
        var check = uint.MaxValue;
        foreach (var one in bytes)
        {
            check ^= one;
            for (var bit = 0; bit < 8; bit++)
            {
                check = (check & 1) == 1 ? (check >> 1) ^ 0xEDB88320 : check >> 1;
            }
        }

        return ~check;
    }
}
