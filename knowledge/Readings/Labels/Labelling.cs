using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Gives each mention the label that was said with it, before or after it.</summary>
internal sealed class Labelling
{
    private readonly List<LabelMention> _labels;
    private readonly List<Mention> _mentions;

    private Labelling(IEnumerable<LabelMention> labels, List<Mention> mentions)
    {
        _labels = [.. labels.Where(label => label.Kind != LabelKind.All)];
        _mentions = mentions;
        // "Compressor windings: C to S 3.2, C to R 1.4": the terminals are the labels, the compressor is the topic.
        List<LabelMention> terminals = _labels.FindAll(label => label.NamesTerminals);
        _labels = terminals.Count == mentions.Count ? terminals : _labels;
    }

    /// <summary>Labels the mentions in place.</summary>
    /// <returns>False if terminals were named that no value could be told to belong to.</returns>
    public static bool Apply(TokenList tokens, IEnumerable<LabelMention> labels, List<Mention> mentions)
    {
        var labelling = new Labelling(labels, mentions);
        return labelling._labels.Count == 0 || mentions.Count == 0 || labelling.Whole()
            || new ClauseLabelling(tokens, labelling._labels, mentions).Apply();
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
}
