namespace ShopJobs.Domain.Procedures;

/// <summary>What a finished job is called on the customer's page, and what was done in it, in the customer's words.</summary>
/// <param name="Title">What is done now, as the customer says it: "Wheels fitted".</param>
/// <param name="Says">One to three whole sentences in the past, without a figure of torque; said only where every step stands signed.</param>
public sealed record CustomerText(string Title, IReadOnlyList<string> Says);
