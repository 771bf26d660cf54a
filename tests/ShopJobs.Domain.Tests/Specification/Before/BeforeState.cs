namespace ShopJobs.Domain.Tests.Specification.Before;

/// <summary>A joint of one bolt in one stage.</summary>
internal enum Bolt
{
    AsFound,
    Open,
    HandTight,
    Good,

    /// <summary>Pulled before its time: held.</summary>
    Held,
}

/// <summary>A sign-off.</summary>
internal enum Signature
{
    None,
    Stands,

    /// <summary>What it rested on moved: it may be signed again.</summary>
    Fell,
}

/// <summary>Two steps: the second, worked by another person, waits for the first.</summary>
internal sealed record BeforeState(Bolt First, Signature FirstSigned, Bolt Second, Signature SecondSigned)
{
    public static readonly BeforeState AtFirst = new(Bolt.AsFound, Signature.None, Bolt.AsFound, Signature.None);
}
