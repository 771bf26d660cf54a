namespace ShopJobs.Domain.Logbook;

/// <summary>How somebody outside the shop said something that others rely on.</summary>
public enum SaidHow
{
    InPerson,
    ByTelephone,
    InWriting,
}
