using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Somebody leaves a joint that is begun and not at torque, and says so.</summary>
/// <param name="Last">The newest entry of the joint's work then.</param>
/// <param name="Words">What is half done, in words; null where the record says it all.</param>
public sealed record LeftHalfDone(JobId Job, string Group, Joint Joint, long Last, ContentDigest? Words) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Joint = Joint, About = [Last], Texts = KeptText.Given(("What is half done", Words)) };
}

/// <summary>Somebody goes on with a joint that was left half done, and has seen that its last item is as it was recorded.</summary>
/// <param name="Last">The entry of that item.</param>
public sealed record WorkTakenOver(JobId Job, string Group, Joint Joint, long Last) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Joint = Joint, About = [Last] };
}
