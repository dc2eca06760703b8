using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>
/// Recognises "in" and "out" for the air of a unit where return and supply air were asked: "75 in, 57 out".
/// </summary>
internal sealed class AirWays
{
    private static readonly string[] Ins = ["in", "inlet", "intake", "entering"];

    private static readonly string[] Outs = ["out", "outlet", "leaving"];

    private static readonly string[] Leads = ["air", "going", "coming", "blowing"];

    // "In the return", "out of the vent": the place comes behind; these words end or go on with a report.
    private static readonly string[] Joints =
        ["air", "and", "is", "was", "at", "then", "but", "with", "reads", "about", "around"];

    private readonly TokenList _tokens;
    private readonly string? _return;
    private readonly string? _supply;

    public AirWays(TokenList tokens, ImmutableArray<AskedField> fields)
    {
        _tokens = tokens;
        (string? back, string? ahead) = (Named(fields, "return"), Named(fields, "supply"));
        // One alone may mean anything: "72 in here".
        bool both = back is not null && ahead is not null && Any(Ins) && Any(Outs);
        (_return, _supply) = both ? (back, ahead) : (null, null);
    }

    public LabelMention? At(int first)
    {
        if (_return is null || _supply is null)
        {
            return null;
        }

        int way = Leads.Contains(_tokens[first].Lower) ? first + 1 : first;
        return IsWay(way, Ins) ? Label(first, way, _return) : IsWay(way, Outs) ? Label(first, way, _supply) : null;
    }

    private LabelMention Label(int first, int way, string text) =>
        new(first, _tokens[way + 1].Is("air") ? way + 2 : way + 1, text, LabelKind.Asked);

    private static string? Named(ImmutableArray<AskedField> fields, string word) =>
        fields.Where(field => field.Label.ToLowerInvariant().Split(' ') is var words && words.Contains("air")
            && words.Contains(word))
            .ToArray() is [var only] ? only.Label : null;

    private bool Any(string[] ways) => Enumerable.Range(0, _tokens.Count).Any(at => IsWay(at, ways));

    private bool IsWay(int at, string[] ways) => _tokens[at].IsWord && ways.Contains(_tokens[at].Lower)
        && (!_tokens[at + 1].IsWord || Joints.Contains(_tokens[at + 1].Lower));
}
