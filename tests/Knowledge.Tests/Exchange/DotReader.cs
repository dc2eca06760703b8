namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>Reads a directed graph in the DOT language, rule by rule as its grammar has them.</summary>
/// <remarks>
/// Source: "The DOT Language", graphviz.org, doc/info/lang.html:
/// graph: [strict] (graph | digraph) [ID] '{' stmt_list '}'; stmt_list: [stmt [';'] stmt_list];
/// stmt: node_stmt | edge_stmt | attr_stmt | ID '=' ID | subgraph; attr_stmt: (graph | node | edge) attr_list;
/// attr_list: '[' [a_list] ']' [attr_list]; a_list: ID '=' ID [';' | ','] [a_list]; edge_stmt: node_id edgeRHS
/// [attr_list]; edgeRHS: edgeop node_id [edgeRHS]; node_stmt: node_id [attr_list]; node_id: ID [port].
/// Not read, for nothing here writes them: undirected graphs, graphs within graphs, ports.
/// </remarks>
internal sealed class DotReader
{
    private readonly List<DotToken> _tokens;
    private int _at;

    private DotReader(string text) => _tokens = DotTokens.Of(text);

    /// <summary>Every node that a statement or an edge names.</summary>
    public HashSet<string> Nodes { get; } = [];

    public List<(string From, string To)> Edges { get; } = [];

    /// <exception cref="FormatException">The text is not of the language.</exception>
    public static DotReader Read(string text)
    {
        var reader = new DotReader(text);
        if (reader.IsNext("STRICT")) reader._at++;
        reader.Take("DIGRAPH");
        if (!reader.IsNext("{")) reader.Id();
        reader.Take("{");
        while (!reader.IsNext("}")) reader.Statement();
        reader.Take("}");
        return reader._at == reader._tokens.Count ? reader : throw new FormatException("text after the graph");
    }

    private void Statement()
    {
        if (IsNext("NODE") || IsNext("EDGE") || IsNext("GRAPH")) Defaults();
        else OfNode(Id());
        if (IsNext(";")) _at++;
    }

    private void Defaults()
    {
        _at++;
        if (!IsNext("[")) throw new FormatException($"[ expected at word {_at}");
        Attributes();
    }

    private void OfNode(string first)
    {
        if (IsNext("="))
        {
            _at++;
            Id();
            return;
        }

        Nodes.Add(first);
        while (IsNext("->")) first = Edge(first);
        Attributes();
    }

    private string Edge(string from)
    {
        Take("->");
        string to = Id();
        Nodes.Add(to);
        Edges.Add((from, to));
        return to;
    }

    private void Attributes()
    {
        while (IsNext("["))
        {
            _at++;
            while (!IsNext("]")) Attribute();
            Take("]");
        }
    }

    private void Attribute()
    {
        Id();
        Take("=");
        Id();
        if (IsNext(",") || IsNext(";")) _at++;
    }

    private bool IsNext(string text) => _at < _tokens.Count && !_tokens[_at].IsId && _tokens[_at].Text == text;

    private void Take(string text)
    {
        if (!IsNext(text)) throw new FormatException($"{text} expected at word {_at}");
        _at++;
    }

    private string Id() => _at < _tokens.Count && _tokens[_at].IsId
        ? _tokens[_at++].Text
        : throw new FormatException($"a name expected at word {_at}");
}
