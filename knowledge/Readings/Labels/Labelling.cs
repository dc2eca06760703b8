using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Gives each mention the label that was said with it, before or after it.</summary>
internal sealed class Labelling
{
    private readonly TokenList _tokens;
    private readonly List<LabelMention> _labels;
    private readonly List<Mention> _mentions;

    private Labelling(TokenList tokens, IEnumerable<LabelMention> labels, List<Mention> mentions)
    {
        _tokens = tokens;
        _labels = [.. labels.Where(label => label.Kind != LabelKind.All)];
        _mentions = mentions;
    }

    /// <summary>Labels the mentions in place.</summary>
    /// <returns>False if terminals were named that no value could be told to belong to.</returns>
    public static bool Apply(TokenList tokens, IEnumerable<LabelMention> labels, List<Mention> mentions)
    {
        var labelling = new Labelling(tokens, labels, mentions);
        return labelling._labels.Count == 0 || mentions.Count == 0 || labelling.Whole() || labelling.ByClause();
    }

    // As many labels as values, all labels first, all values first, or in turns.
    private bool Whole()
    {
        if (_labels.Count != _mentions.Count)
        {
            return false;
        }
        bool labelsFirst = _labels[^1].First < _mentions[0].First;
        bool valuesFirst = _mentions[^1].First < _labels[0].First;
        bool turns = Turns(labelBeforeValue: true) || Turns(labelBeforeValue: false);
        for (int i = 0; i < _mentions.Count && (labelsFirst || valuesFirst || turns); i++)
        {
            _mentions[i] = _mentions[i] with { Label = _labels[i] };
        }
        return labelsFirst || valuesFirst || turns;
    }

    private bool Turns(bool labelBeforeValue)
    {
        for (int i = 0; i < _mentions.Count; i++)
        {
            int first = labelBeforeValue ? _labels[i].First : _mentions[i].First;
            int second = labelBeforeValue ? _mentions[i].First : _labels[i].First;
            int next = i + 1 == _mentions.Count ? int.MaxValue : labelBeforeValue ? _labels[i + 1].First
                : _mentions[i + 1].First;
            if (first >= second || second >= next)
            {
                return false;
            }
        }
        return true;
    }

    private bool ByClause()
    {
        bool all = true;
        int label = 0;
        int mention = 0;
        for (int start = 0; start < _tokens.Count;)
        {
            int end = ClauseEnd(start, label, mention);
            int firstLabel = label;
            int firstMention = mention;
            while (label < _labels.Count && _labels[label].First < end)
            {
                label++;
            }
            while (mention < _mentions.Count && _mentions[mention].First < end)
            {
                mention++;
            }
            all &= Clause(firstLabel, label, firstMention, mention);
            start = end;
        }
        return all;
    }

    private int ClauseEnd(int start, int label, int mention)
    {
        int at = start + 1;
        while (at < _tokens.Count && !EndsClause(at, ref label, ref mention))
        {
            at++;
        }
        return at;
    }

    // A mark or "and" inside a label or a number ends nothing.
    private bool EndsClause(int at, ref int label, ref int mention)
    {
        while (label < _labels.Count && _labels[label].End <= at)
        {
            label++;
        }
        while (mention < _mentions.Count && _mentions[mention].End <= at)
        {
            mention++;
        }
        bool inside = (label < _labels.Count && _labels[label].First <= at)
            || (mention < _mentions.Count && _mentions[mention].First <= at);
        Token token = _tokens[at];
        return !inside && (token.Is(',') || token.Is(';') || token.Is('\n') || token.Is('.')
            || token.Lower is "and" or "then" or "but" or "with");
    }

    // One clause: as many labels as values go in turns; otherwise a value takes the label next to it.
    private bool Clause(int firstLabel, int endLabel, int firstMention, int endMention)
    {
        int labels = endLabel - firstLabel;
        int mentions = endMention - firstMention;
        if (mentions == 0 || labels == 0)
        {
            return labels == 0 || !_labels[firstLabel].NamesTerminals;
        }
        if (labels == mentions)
        {
            for (int i = 0; i < labels; i++)
            {
                Give(firstMention + i, firstLabel + i);
            }
            return true;
        }
        if (mentions == 1)
        {
            Give(firstMention, Enumerable.Range(firstLabel, labels).MinBy(i =>
                Distance(_labels[i], _mentions[firstMention])));
            return !_labels.Skip(firstLabel).Take(labels).Skip(1).Any(label => label.NamesTerminals);
        }
        if (labels == 1)
        {
            LabelMention only = _labels[firstLabel];
            int nearest = only.First < _mentions[firstMention].First ? firstMention
                : Enumerable.Range(firstMention, mentions).MinBy(i => Distance(only, _mentions[i]));
            Give(nearest, firstLabel);
            return true;
        }
        return false;
    }

    private static int Distance(LabelMention label, Mention mention) =>
        label.First < mention.First ? mention.First - label.End : label.First - mention.End;

    private void Give(int mention, int label) =>
        _mentions[mention] = _mentions[mention] with { Label = _labels[label] };
}
