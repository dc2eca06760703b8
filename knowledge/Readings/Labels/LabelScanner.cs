using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Finds the labels in a message, those of the form first.</summary>
internal sealed class LabelScanner
{
    private readonly TokenList _tokens;
    private readonly AskedLabels _asked;
    private readonly AirWays _ways;
    private readonly bool[] _taken;

    private LabelScanner(TokenList tokens, ReadingContext context)
    {
        _tokens = tokens;
        _asked = new AskedLabels(context.Labels.Concat(context.Fields.Select(field => field.Label)));
        _ways = new AirWays(tokens, context.Fields);
        _taken = new bool[tokens.Count];
    }

    /// <summary>The labels in order, and for each token whether a label holds it.</summary>
    public static (IReadOnlyList<LabelMention> Labels, bool[] Taken) Scan(TokenList tokens, ReadingContext context)
    {
        var scanner = new LabelScanner(tokens, context);
        return (scanner.Labels(), scanner._taken);
    }

    private List<LabelMention> Labels()
    {
        var found = new List<LabelMention>();
        for (int at = 0; at < _tokens.Count;)
        {
            LabelMention? label =
                _asked.At(_tokens, at) ?? _ways.At(at) ?? Terminals.At(_tokens, at) ?? AllLabels.At(_tokens,
                    at) ?? Places.At(_tokens, at);
            if (label is null)
            {
                at++;
                continue;
            }
            found.Add(label);
            Array.Fill(_taken, true, label.First, label.End - label.First);
            at = label.End;
        }
        return found;
    }
}
