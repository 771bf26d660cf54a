namespace ShopJobs.Domain.Tests.Specification.Proof;

/// <summary>The people of a specification, one or several of them.</summary>
[Flags]
internal enum People
{
    Nobody = 0,
    Ann = 1,
    Bob = 2,
    Cy = 4,
}
