using ShopJobs.Domain.Cars;

namespace ShopJobs.Web.Components.Cars;

/// <summary>What is said of a chassis number that was typed.</summary>
internal static class ChassisWords
{
    public static string Of(ChassisNumber number) => number.Form switch
    {
        ChassisForm.Checked => "A VIN; its check digit agrees.",
        ChassisForm.CheckFails => "A VIN, and its check digit does not agree: one character is wrong. Read it again at the car. It can be saved as it is.",
        ChassisForm.NoCheckAsked => "A VIN of a part of the world that asks no check digit: compare it with the car, character by character.",
        ChassisForm.Other => "No VIN of 17 characters: kept as it is written. Compare it with the car.",
        _ => throw new ArgumentOutOfRangeException(nameof(number), number.Form, "Not a form of a chassis number."),
    };
}
