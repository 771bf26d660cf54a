using System.Text;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Visits;

/// <summary>What somebody typed, as a text to be kept beside an entry.</summary>
internal static class TypedText
{
    /// <summary>The text without blanks around it; null where nothing was typed.</summary>
    public static NewContent? Of(string typed) => Typed.Clean(typed) is { Length: > 0 } text ? NewContent.Of(Encoding.UTF8.GetBytes(text)) : null;
}
