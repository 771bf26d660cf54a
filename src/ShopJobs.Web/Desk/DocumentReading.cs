using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Web.Desk;

/// <summary>Reads stored documents. They were checked when they were imported: one that can't be read now is corrupt.</summary>
internal static class DocumentReading
{
    public static JointRegister Register(byte[] yaml) => Loaded(JointRegisterDocument.Load(yaml, "stored joint register"));

    public static LoadedDocument<Procedure> Procedure(byte[] yaml, JointRegister register) =>
        ProcedureDocument.Load(yaml, "stored procedure", register);

    /// <summary>The procedure as it is on cars that follow this list of the register.</summary>
    public static LoadedDocument<Procedure> Procedure(byte[] yaml, JointRegister register, string follows) =>
        ProcedureDocument.LoadFor(yaml, "stored procedure", register, follows);

    /// <summary>What a stored document says; throws where it can't be read.</summary>
    public static T Loaded<T>(LoadedDocument<T> document)
        where T : class =>
        document.Value ?? throw new InvalidOperationException(
            $"A stored document can't be read: {string.Join("; ", document.Errors)}");
}
