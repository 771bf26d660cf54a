using ShopJobs.Web.Components.Bench.Fields;

namespace ShopJobs.Web.Components.Bench;

/// <summary>One computation: a question in a person's words, its inputs, and the domain's answer. Computes nothing itself.</summary>
public abstract class BenchCard
{
    /// <summary>Its name in the address.</summary>
    public abstract string Key { get; }

    /// <summary>What a person wants to know.</summary>
    public abstract string Question { get; }

    /// <summary>When it is of use, in one line.</summary>
    public abstract string Use { get; }

    /// <summary>Its inputs in their order.</summary>
    public abstract IReadOnlyList<BenchField> Fields { get; }

    /// <summary>True where it takes or answers torques, so that their unit can be picked.</summary>
    public virtual bool SpeaksTorque => Fields.Any(asked => asked is TorqueField);

    /// <summary>True where it takes or answers lengths, areas, loads or stresses, which go by the unit of length.</summary>
    public virtual bool SpeaksLength => Fields.Any(asked => asked is LengthField or ForceField or StrengthField);

    /// <summary>How it computes.</summary>
    public abstract BenchPaper Paper { get; }

    /// <summary>What the inputs say together that cannot be; asked once each can be read.</summary>
    public virtual IEnumerable<BenchProblem> Problems(BenchInputs inputs) => [];

    /// <summary>The answer to inputs that were found in order.</summary>
    public abstract BenchAnswer Answer(BenchInputs inputs);
}
