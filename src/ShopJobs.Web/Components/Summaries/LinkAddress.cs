using Microsoft.AspNetCore.Components;
using QRCoder;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The address that goes to a customer.</summary>
public sealed class LinkAddress(IConfiguration configuration)
{
    /// <summary>Setting with the address under which customers reach this program, such as https://pages.example.</summary>
    public const string Setting = "Network:CustomerAddress";

    /// <summary>The whole link. Without the setting it starts with the address this tablet uses.</summary>
    public string Of(string token, string here) => new Uri(new Uri(configuration[Setting] ?? here), $"/s/{token}").ToString();

    /// <summary>True when customers are known to reach it.</summary>
    public bool IsSet => !string.IsNullOrWhiteSpace(configuration[Setting]);

    /// <summary>The link as a QR code, a drawing of its own: dark on white in either look.</summary>
    public static MarkupString QrCode(string link)
    {
        using var data = QRCodeGenerator.GenerateQrCode(link, QRCodeGenerator.ECCLevel.M);
        using var drawing = new SvgQRCode(data);
        return new MarkupString(drawing.GetGraphic(6));
    }
}
