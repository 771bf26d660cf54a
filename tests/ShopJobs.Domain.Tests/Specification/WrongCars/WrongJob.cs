using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.WrongCars;

/// <summary>What became of a joint that the wrong job touched.</summary>
internal enum Touched
{
    Not,
    Open,
    OpenVoided,
    Closed,
}

/// <summary>A person and which of the two joints he speaks of.</summary>
internal readonly record struct Word(People By, int Joint)
{
    public static readonly Word[] All = [.. from person in Persons.Each from joint in (int[])[1, 2] select new Word(person, joint)];

    public override string ToString() => $"{By}, joint {Joint}";
}

/// <summary>A job that was put on the wrong car, with two joints that it may have opened.</summary>
/// <param name="TakenBack">The lead took the job back.</param>
/// <param name="VoidedBy">Who said of the joint that it was never opened, not confirmed yet.</param>
/// <param name="Unsigned">The job's unsigned steps still ask to be done.</param>
internal readonly record struct WrongJob(Touched First, Touched Second, People FirstVoidedBy, People SecondVoidedBy, bool TakenBack, bool Unsigned, bool Released)
{
    public static readonly WrongJob Start = new() { Unsigned = true };

    public Touched Of(int joint) => joint == 1 ? First : Second;

    public People VoidedBy(int joint) => joint == 1 ? FirstVoidedBy : SecondVoidedBy;

    public bool Unclosed => First is Touched.Open or Touched.OpenVoided || Second is Touched.Open or Touched.OpenVoided;

    public WrongJob With(int joint, Touched touched, People voidedBy)
    {
        var changed = joint == 1 ? this with { First = touched, FirstVoidedBy = voidedBy } : this with { Second = touched, SecondVoidedBy = voidedBy };
        return changed.Judge();
    }

    public WrongJob TakeBack() => (this with { TakenBack = true }).Judge();

    public WrongJob Confirm(Word word) => word.By == VoidedBy(word.Joint) ? this with { Released = false } : With(word.Joint, Touched.Not, People.Nobody);

    public WrongJob AskRelease() => this with { Released = !Unclosed && !Unsigned };

    private WrongJob Judge() => this with { Unsigned = !TakenBack || Unclosed, Released = false };
}
