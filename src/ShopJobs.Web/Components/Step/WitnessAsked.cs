using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Step;

/// <summary>Somebody pressed one of the witness's two buttons.</summary>
public sealed record WitnessAsked(AwaitedWitness Awaited, WitnessMethod Method, bool Accepted);
