using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Labels values clause by clause, where labels and values do not take turns over the message.</summary>
internal sealed class ClauseLabelling(TokenList tokens, List<LabelMention> labels, List<Mention> mentions)
{
    /// <summary>Labels the mentions in place.</summary>
    /// <returns>False if terminals were named that no value could be told to belong to.</returns>
    public bool Apply()
    {
        bool all = true;
        int label = 0;
        int mention = 0;
        for (int start = 0; start < tokens.Count;)
        {
            int end = ClauseEnd(start, label, mention);
            int firstLabel = label;
            int firstMention = mention;
            while (label < labels.Count && labels[label].First < end)
            {
                label++;
            }
            while (mention < mentions.Count && mentions[mention].First < end)
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
        while (at < tokens.Count && !EndsClause(at, ref label, ref mention))
        {
            at++;
        }
        return at;
    }

    // A mark or "and" inside a label or a number ends nothing.
    private bool EndsClause(int at, ref int label, ref int mention)
    {
        while (label < labels.Count && labels[label].End <= at)
        {
            label++;
        }
        while (mention < mentions.Count && mentions[mention].End <= at)
        {
            mention++;
        }
        bool inside = (label < labels.Count && labels[label].First <= at)
            || (mention < mentions.Count && mentions[mention].First <= at);
        Token token = tokens[at];
        return !inside && (token.Is(',') || token.Is(';') || token.Is('\n') || token.Is('.')
            || token.Lower is "and" or "then" or "but" or "with");
    }

    // One clause: as many labels as values go in turns; otherwise a value takes the label next to it.
    private bool Clause(int firstLabel, int endLabel, int firstMention, int endMention)
    {
        int labelCount = endLabel - firstLabel;
        int valueCount = endMention - firstMention;
        if (valueCount == 0 || labelCount == 0)
        {
            return labelCount == 0 || !labels[firstLabel].NamesTerminals;
        }
        if (valueCount == 1)
        {
            return Nearest(firstLabel, endLabel, firstMention);
        }
        bool labelFirst = labels[firstLabel].First < mentions[firstMention].First;
        return labelCount == valueCount ? Pairs(firstLabel, firstMention, labelCount)
            : labelFirst ? Forward(firstLabel, endLabel, firstMention, endMention)
            : Backward(firstLabel, endLabel, firstMention, endMention);
    }

    private bool Pairs(int firstLabel, int firstMention, int count)
    {
        for (int i = 0; i < count; i++)
        {
            Give(firstMention + i, firstLabel + i);
        }
        return true;
    }

    private bool Nearest(int firstLabel, int endLabel, int mention)
    {
        List<int> all = [.. Enumerable.Range(firstLabel, endLabel - firstLabel)];
        List<int> terminals = all.FindAll(i => labels[i].NamesTerminals);
        List<int> candidates = terminals.Count > 0 ? terminals : all;
        Give(mention, candidates.MinBy(i => Distance(labels[i], mentions[mention])));
        return terminals.Count <= 1;
    }

    // "Suction 118 psi at 52F, liquid 350 psi at 95F": a label goes to the value that follows it.
    private bool Forward(int firstLabel, int endLabel, int firstMention, int endMention)
    {
        bool all = true;
        int mention = firstMention;
        for (int label = firstLabel; label < endLabel; label++)
        {
            int limit = label + 1 < endLabel ? labels[label + 1].First : int.MaxValue;
            while (mention < endMention && mentions[mention].First < labels[label].First)
            {
                mention++;
            }
            bool found = mention < endMention && mentions[mention].First < limit;
            all &= Give(mention, label, found);
        }
        return all;
    }

    // "118 psi 52F suction": a label goes to the value right before it.
    private bool Backward(int firstLabel, int endLabel, int firstMention, int endMention)
    {
        bool all = true;
        int mention = firstMention - 1;
        for (int label = firstLabel; label < endLabel; label++)
        {
            while (mention + 1 < endMention && mentions[mention + 1].First < labels[label].First)
            {
                mention++;
            }
            bool found = mention >= firstMention && mentions[mention].Label is null;
            all &= Give(mention, label, found);
        }
        return all;
    }

    private bool Give(int mention, int label, bool found)
    {
        if (found)
        {
            Give(mention, label);
        }
        return found || !labels[label].NamesTerminals;
    }

    private static int Distance(LabelMention label, Mention mention) =>
        label.First < mention.First ? mention.First - label.End : label.First - mention.End;

    private void Give(int mention, int label) =>
        mentions[mention] = mentions[mention] with { Label = labels[label] };
}
