using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>
/// Reads the one YAML document into nodes with their places. Every value stays text as it was written. Anchors, aliases,
/// tags, directives, double keys and a second document are refused. It stops reading where lists and keys lie too deep in each
/// other, or where there are more of them than any document of a shop has: what lies deep costs the parser the square of its depth.
/// </summary>
internal sealed class DocumentTree
{
    /// <summary>Most events of the parser: keys, values, and starts and ends of lists. The shop's longest procedure has a few thousand.</summary>
    internal const int MostEvents = 200_000;

    private const int Deepest = 16;
    private const int LongestKey = 60;

    private readonly Parser parser;
    private readonly ProblemsFound problems;
    private readonly CancellationToken cancellation;

    private DocumentTree(string text, ProblemsFound problems, CancellationToken cancellation)
    {
        parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
        this.problems = problems;
        this.cancellation = cancellation;
    }

    /// <summary>How many events of the parser were looked at.</summary>
    internal int Events { get; private set; }

    /// <summary>The top of the document, or null with the problem noted. Throws when it is cancelled.</summary>
    public static MapNode? Read(byte[] bytes, ProblemsFound problems, CancellationToken cancellation = default) => Read(bytes, problems, cancellation, out _);

    /// <param name="events">How many events of the parser were looked at.</param>
    internal static MapNode? Read(byte[] bytes, ProblemsFound problems, CancellationToken cancellation, out int events)
    {
        events = 0;
        if (DocumentText.Read(bytes, problems) is not { } text)
        {
            return null;
        }

        var tree = new DocumentTree(text, problems, cancellation);
        try
        {
            return tree.Root();
        }
        catch (TooMuch much)
        {
            problems.Error(much.Line, much.Column, much.Path, much.Message, "write it as docs/procedures.md shows; what follows was not read");
            return null;
        }
        catch (YamlException wrong)
        {
            problems.Error(
                (int)wrong.Start.Line, (int)wrong.Start.Column, "", $"Not readable as YAML from here on: {wrong.Message.TrimEnd('.')}",
                "look at indents, colons and quotes on this line and the one above; what follows was not read");
            return null;
        }
        finally
        {
            events = tree.Events;
        }
    }

    private bool Next()
    {
        cancellation.ThrowIfCancellationRequested();
        var more = parser.MoveNext();
        if (++Events > MostEvents && parser.Current is { } at)
        {
            throw new TooMuch((int)at.Start.Line, (int)at.Start.Column, "", FormattableString.Invariant($"The document has more than {MostEvents} keys and values"));
        }

        return more;
    }

    private MapNode? Root()
    {
        Next();
        Next();
        if (parser.Current is not DocumentStart start)
        {
            problems.Error(1, 1, "", "The document is empty", "write it as docs/procedures.md shows");
            return null;
        }

        if (start.Version is not null || start.Tags?.Any(tag => !IsDefault(tag.Handle)) == true)
        {
            problems.Error((int)start.Start.Line, (int)start.Start.Column, "", "A line starts with %: directives are not taken", "delete the line");
        }

        Next();
        var node = Node("", 0);
        Next();
        if (Next() && parser.Current is DocumentStart second)
        {
            problems.Error((int)second.Start.Line, (int)second.Start.Column, "", "A second document starts here", "put it in a file of its own");
        }

        if (node is MapNode map)
        {
            return map;
        }

        if (node is not RefusedNode)
        {
            problems.Error(node, "The document does not start with a key", "write it as docs/procedures.md shows");
        }

        return null;
    }

    /// <summary>Reads the node the parser stands on and leaves the parser on its last event.</summary>
    private DocumentNode Node(string path, int depth)
    {
        var at = parser.Current!;
        var (line, column) = ((int)at.Start.Line, (int)at.Start.Column);
        if (at is AnchorAlias)
        {
            return Refuse(line, column, path, "An alias (*name) is not taken", "write the text out here");
        }

        var marked = (NodeEvent)at;
        if (!marked.Anchor.IsEmpty)
        {
            problems.Error(line, column, path, "An anchor (&name) is not taken", "delete it and write the text out where it is used");
        }

        if (!marked.Tag.IsEmpty)
        {
            problems.Error(line, column, path, "A tag (!name) is not taken", "delete it: every value is read as written");
        }

        return at switch
        {
            Scalar scalar => new TextNode(line, column, path, TextOf(scalar)),
            _ when depth >= Deepest => throw new TooMuch(line, column, path, $"Lists and keys lie more than {Deepest} deep in each other"),
            SequenceStart => List(line, column, path, depth),
            _ => Map(line, column, path, depth),
        };
    }

    private ListNode List(int line, int column, string path, int depth)
    {
        var items = new List<DocumentNode>();
        for (Next(); parser.Current is not SequenceEnd; Next())
        {
            items.Add(Node($"{path}[{items.Count + 1}]", depth + 1));
        }

        return new ListNode(line, column, path, items);
    }

    private MapNode Map(int line, int column, string path, int depth)
    {
        var entries = new List<MapEntry>();
        var seen = new Dictionary<string, int>();
        for (Next(); parser.Current is not MappingEnd; Next())
        {
            var read = Node(path, depth + 1);
            var name = read is TextNode { Text.Length: <= LongestKey } text ? text.Text : null;
            Next();
            var value = Node(name is null || path.Length == 0 ? name ?? path : $"{path}.{name}", depth + 1);
            if (name is null)
            {
                if (read is not RefusedNode)
                {
                    problems.Error(read, $"A key is one word of at most {LongestKey} letters", "write it as docs/procedures.md shows");
                }
            }
            else if (seen.TryGetValue(name, out var first))
            {
                problems.Error(read, $"The key {Wording.Quote(name)} comes twice, first on line {first}", "keep one of them");
            }
            else
            {
                seen[name] = read.Line;
                entries.Add(new MapEntry((TextNode)read, value));
            }
        }

        return new MapNode(line, column, path, entries);
    }

    private RefusedNode Refuse(int line, int column, string path, string what, string next)
    {
        problems.Error(line, column, path, what, next);
        return new RefusedNode(line, column, path);
    }

    private static string TextOf(Scalar scalar) =>
        scalar.Style == ScalarStyle.Plain && scalar.Value is "~" or "null" ? "" : scalar.Value.Trim();

    private static bool IsDefault(string handle) => handle is "!" or "!!";

    /// <summary>Reading stops here.</summary>
    private sealed class TooMuch(int line, int column, string path, string message) : Exception(message)
    {
        public int Line { get; } = line;

        public int Column { get; } = column;

        public string Path { get; } = path;
    }
}
