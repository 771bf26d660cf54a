using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>The documents the demo shop starts with.</summary>
internal static class Seed
{
    public static readonly LoadedDocument<JointRegister> RegisterDocument =
        JointRegisterDocument.Load(Bytes("joint-register.yaml"), "joint-register.yaml");

    public static JointRegister Register => RegisterDocument.Value!;

    public static LoadedDocument<Procedure> Procedure(string file) =>
        ProcedureDocument.Load(Bytes($"procedures/{file}"), file, Register);

    public static byte[] Bytes(string file)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ShopJobs.sln")))
        {
            folder = folder.Parent!;
        }

        return File.ReadAllBytes(Path.Combine(folder.FullName, "seed", file));
    }
}
