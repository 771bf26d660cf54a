namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>A procedure as a document. Its form is described in docs/procedures.md.</summary>
public static class ProcedureDocument
{
    private static readonly string[] Keys = ["code", "title", "revision", "demo-data", "cautions", "groups", "steps"];

    /// <summary>The procedure checked against the register, or every reason why it is not taken.</summary>
    public static LoadedDocument<Procedure> Load(byte[] bytes, string name, JointRegister register, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(register);
        var problems = new ProblemBook();
        var procedure = DocumentTree.Read(bytes, problems, cancellation) is { } root ? Read(new MapReader(root, problems, Keys), register) : null;
        return problems.Close(name, bytes, procedure);
    }

    private static Procedure? Read(MapReader map, JointRegister register)
    {
        var problems = map.Problems;
        var code = Code(map);
        var title = map.Text("title", 200);
        var revision = map.Text("revision", 40);
        var demo = map.YesNo("demo-data");
        var cautions = map.Texts("cautions");
        var groups = new GroupReader(problems, register).Read(map.Needed("groups") is null ? [] : map.List("groups"));
        var stepNodes = map.Needed("steps") is null ? [] : map.List("steps");
        if (map.At("steps") is ListNode { Items.Count: 0 } empty)
        {
            problems.Error(empty, "The procedure has no step", "write at least one");
        }

        var steps = new StepReader(problems, register).Read(stepNodes);
        new StepChecks(problems, register, groups, steps).Check();
        StepLoops.Check(problems, groups, steps);
        return problems.Errors > 0
            ? null
            : new Procedure(
                code!, title!, revision!, demo!.Value, cautions,
                [.. groups.Select(group => group.Group!)], [.. steps.Select(step => step.Step!)]);
    }

    private static string? Code(MapReader map)
    {
        if (map.Text("code", 40) is not { } code)
        {
            return null;
        }

        if (code.All(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-'))
        {
            return code;
        }

        map.Problems.Error(map.At("code"), $"{Wording.Quote(code)} is no code", "use letters, digits and hyphens, for example P5");
        return null;
    }
}
