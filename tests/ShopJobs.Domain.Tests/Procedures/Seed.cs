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

    /// <summary>Every procedure of the demo shop.</summary>
    public static IReadOnlyList<string> Files =>
        [.. Directory.GetFiles(Path.Combine(Folder, "procedures"), "*.yaml").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    private static string Folder
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "ShopJobs.sln")))
            {
                folder = folder.Parent!;
            }

            return Path.Combine(folder.FullName, "seed");
        }
    }

    public static byte[] Bytes(string file) => File.ReadAllBytes(Path.Combine(Folder, file));
}
