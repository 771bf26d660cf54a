using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Procedures;

/// <summary>What is wrong about a step, as somebody at the car said.</summary>
public enum StepFault
{
    Number,
    Order,
    Words,
    Missing,
}

/// <summary>Somebody says that a step of a procedure is wrong. It stops nothing; it waits for an author.</summary>
public sealed class StepRemark
{
    public const int WordsLength = 500;

    public Guid Id { get; init; }

    /// <summary>The revision it was said of.</summary>
    public required string ProcedureDigest { get; init; }

    /// <summary>Id of the step in the procedure.</summary>
    public required string StepId { get; init; }

    public CarId CarId { get; init; }

    public StepFault Fault { get; init; }

    /// <summary>In words; empty where nothing was typed.</summary>
    public string Words { get; init; } = "";

    public DateTime At { get; init; }

    public PersonId By { get; init; }

    /// <summary>What the author says about it; null while it waits.</summary>
    public string? Answer { get; set; }

    public DateTime? AnsweredAt { get; set; }

    public PersonId? AnsweredBy { get; set; }
}
