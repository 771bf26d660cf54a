namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>A procedure as a document. Its form is described in docs/procedures.md.</summary>
public static class ProcedureDocument
{
    private static readonly string[] Keys = ["code", "title", "revision", "demo-data", "fits", "customer", "cautions", "groups", "steps"];

    /// <summary>
    /// The procedure checked against the register, or every reason why it is not taken. It is checked on each kind of car that it names
    /// under “fits”; where it names none, on the register's own list, or else on the first kind of car that it fits.
    /// </summary>
    public static LoadedDocument<Procedure> Load(byte[] bytes, string name, JointRegister register, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(register);
        var (root, problems) = Tree(bytes, cancellation);
        var named = root is null ? [] : FitsOf(new MapReader(root, new ProblemsFound(), Keys), register, new ProblemsFound());
        IEnumerable<string> cars = named.Count > 0 ? named : [JointList.Base, .. register.Cars.Keys];
        LoadedDocument<Procedure>? first = null;
        foreach (var car in cars)
        {
            var read = On(car, bytes, name, register, root, problems);
            first ??= read;
            if (read.Value is null == named.Count > 0)
            {
                return read;
            }
        }

        return first!;
    }

    /// <summary>The same, checked on cars that follow one list of the register alone.</summary>
    public static LoadedDocument<Procedure> LoadFor(byte[] bytes, string name, JointRegister register, string follows, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(register);
        var (root, problems) = Tree(bytes, cancellation);
        return On(follows, bytes, name, register, root, problems);
    }

    private static (MapNode? Root, ProblemsFound Problems) Tree(byte[] bytes, CancellationToken cancellation)
    {
        var problems = new ProblemsFound();
        return (DocumentTree.Read(bytes, problems, cancellation), problems);
    }

    private static LoadedDocument<Procedure> On(string follows, byte[] bytes, string name, JointRegister register, MapNode? root, ProblemsFound ofTree)
    {
        var problems = new ProblemsFound(ofTree);
        var procedure = root is null ? null : Read(new MapReader(root, problems, Keys), register.For(new JointList(follows, [])));
        return problems.Close(name, bytes, procedure);
    }

    private static List<string> FitsOf(MapReader map, JointRegister register, ProblemsFound problems)
    {
        var fits = new List<string>();
        foreach (var node in map.List("fits"))
        {
            if (MapReader.TextOf(node, problems) is not { } car)
            {
                continue;
            }

            if (car == JointList.None || !register.Knows(car))
            {
                problems.Error(node, $"The register has no kind of car {Wording.Quote(car)}", Wording.Nearest(car, [JointList.Base, .. (register.Written ?? register).Cars.Keys]));
            }
            else
            {
                fits.Add(car);
            }
        }

        return fits;
    }

    private static Procedure? Read(MapReader map, JointRegister register)
    {
        var problems = map.Problems;
        var code = Code(map);
        var title = map.Text("title", 200);
        var revision = map.Text("revision", 40);
        var demo = map.YesNo("demo-data");
        var fits = FitsOf(map, register, problems);
        var customer = CustomerTextReader.Read(map);
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
                [.. groups.Select(group => group.Group!)], [.. steps.Select(step => step.Step!)])
            {
                Fits = fits,
                Customer = customer,
            };
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
