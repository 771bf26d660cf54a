using System.Globalization;
using ShopJobs.Web.Data.Procedures;

namespace ShopJobs.Web.Components.Revisions;

/// <summary>What is wrong about a step, in words.</summary>
internal static class FaultWords
{
    public static string Words(this StepFault fault) => fault switch
    {
        StepFault.Number => "a number is wrong",
        StepFault.Order => "the order is wrong",
        StepFault.Words => "the words are wrong or not clear",
        _ => "something is missing",
    };

    /// <summary>"Jorn, Blue: a number is wrong. “It says 110.”"</summary>
    public static string Said(this SaidOfStep said) =>
        string.Create(CultureInfo.InvariantCulture, $"{said.By}, at {said.Car}: {said.Row.Fault.Words()}.{(said.Row.Words.Length > 0 ? $" “{said.Row.Words}”" : "")}");
}
