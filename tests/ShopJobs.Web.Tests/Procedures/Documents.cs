using System.Text;
using ShopJobs.Web.Components.Procedures;

namespace ShopJobs.Web.Tests.Procedures;

/// <summary>The demo shop's documents, and small ones that are wrong in one way.</summary>
internal static class Documents
{
    public static DocumentFile Register => Of("joint-register.yaml");

    public static DocumentFile WheelFitUp => Of("P5-wheel-fit-up.yaml");

    public static DocumentFile WheelStuds => Of("P3-wheel-studs.yaml");

    public static DocumentFile Of(string name) => SeedDocuments.All.Single(file => file.Name == name);

    /// <summary>The same document with a part written differently.</summary>
    public static DocumentFile With(this DocumentFile file, string part, string instead)
    {
        var text = Encoding.UTF8.GetString(file.Bytes);
        Assert.Contains(part, text, StringComparison.Ordinal);
        return file with { Bytes = Encoding.UTF8.GetBytes(text.Replace(part, instead, StringComparison.Ordinal)) };
    }
}
