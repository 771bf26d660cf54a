using System.Text;
using BenchmarkDotNet.Attributes;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using YamlDotNet.RepresentationModel;

namespace ShopJobs.Benchmarks;

/// <summary>
/// A procedure of 40 groups checked whole: as a document, and each torque by the specification validator. The floor is parsing
/// the same YAML and nothing else.
/// </summary>
public class ValidationOfFortyGroups
{
    private const int Groups = 40;
    private byte[] yaml = null!;
    private string text = null!;
    private JointRegister register = null!;

    [GlobalSetup]
    public void Write()
    {
        var seed = Path.Combine(AppContext.BaseDirectory, "benchmark-seed");
        var joints = Copied(File.ReadAllText(Path.Combine(seed, "joint-register.yaml")), "  - key: wheel.nut\n", "  - key: wheel.stud-jam-pair", "wheel.nut");
        register = JointRegisterDocument.Load(Encoding.UTF8.GetBytes(joints), "register").Value!;
        text = File.ReadAllText(Path.Combine(seed, "procedures", "P5-wheel-fit-up.yaml"));
        text = Copied(text, "  - id: wheel-nuts\n", "\nsteps:", "id: wheel-nuts", "key: wheel.nut");
        text = text.Replace("permitted: 105..115", "permitted: 80..115", StringComparison.Ordinal); // wide enough for a caution
        text = text.Replace("[wheel.nut]", $"[{string.Join(", ", Enumerable.Range(1, Groups).Select(i => $"wheel.nut-{i}"))}]", StringComparison.Ordinal);
        text = string.Join('\n', text.Split('\n').SelectMany(line => line.Contains("group: wheel-nuts,", StringComparison.Ordinal)
            ? Enumerable.Range(1, Groups).Select(i => line.Replace("wheel-nuts,", $"wheel-nuts-{i},", StringComparison.Ordinal))
            : [line]));
        yaml = Encoding.UTF8.GetBytes(text);
        if (Checked() == 0)
        {
            throw new InvalidOperationException("No caution was found: the wrong thing would be measured.");
        }
    }

    [Benchmark(Baseline = true, Description = "floor: the YAML alone, parsed")]
    public int Floor()
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return stream.Documents[0].AllNodes.Count();
    }

    [Benchmark(Description = "40 groups: document and every torque checked")]
    public int Checked()
    {
        var loaded = ProcedureDocument.Load(yaml, "forty.yaml", register);
        var procedure = loaded.Value ?? throw new InvalidOperationException(string.Join('\n', loaded.Errors));
        return procedure.Groups.Count == Groups
            ? procedure.Groups.Sum(one => ProcedureCautions.For(procedure, one).Count)
            : throw new InvalidOperationException($"{procedure.Groups.Count} groups instead of {Groups}.");
    }

    /// <summary>The text with one block forty times, the names in it numbered.</summary>
    private static string Copied(string whole, string begin, string end, params string[] names)
    {
        var (from, to) = (whole.IndexOf(begin, StringComparison.Ordinal), whole.IndexOf(end, StringComparison.Ordinal));
        var block = whole[from..to] + "\n";
        return whole[..from]
            + string.Concat(Enumerable.Range(1, Groups).Select(i => names.Aggregate(block, (copy, name) => copy.Replace($"{name}\n", $"{name}-{i}\n", StringComparison.Ordinal))))
            + whole[to..];
    }
}
