using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;
using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>Puts values without a label onto the lines of the form, and finds values that contradict one
/// another.</summary>
internal sealed class Assignment(TokenList tokens, ReadingContext context, Gap gap, LabelMention? all)
{
    /// <summary>The mentions on their lines; with a doubt where nothing says which line is meant.</summary>
    public List<Mention> Assign(List<Mention> mentions)
    {
        List<Mention> placed = all is null || context.IsMixed ? Positional(mentions) : ForAll(mentions, all);
        var doubtful = new HashSet<Mention>(ReferenceEqualityComparer.Instance);
        foreach (IGrouping<QuantityKind,
            Mention> kind in placed.Where(mention => !mention.Units.IsEmpty && !mention.IsLoose).GroupBy(mention =>
            Family(mention.Units[0].Kind)))
        {
            if (all is null && Contradicts([.. kind], placed))
            {
                doubtful.UnionWith(kind);
            }
        }
        return [.. placed.Select(mention => doubtful.Contains(mention) && mention.Doubt == Doubt.None
            ? mention with { Doubt = Doubt.WhichOne } : mention)];
    }

    private List<Mention> Positional(List<Mention> mentions)
    {
        List<Mention> asked = [.. mentions.Where(IsAsked)];
        if (context.IsMixed || context.Labels.Length < 2 || asked.Count == 0
            || asked.Exists(mention => mention.Label is not null))
        {
            return mentions;
        }
        bool alike = Enumerable.Range(1, asked.Count - 1).All(i => !MayBeOneNumber(asked[i - 1], asked[i])
            || AreAlike(asked[i - 1], asked[i]));
        if (asked.Count != context.Labels.Length || !alike)
        {
            return [.. mentions.Select(mention => IsAsked(mention) ? mention with { Doubt = Doubt.WhichOne }
                : mention)];
        }
        int line = 0;
        return [.. mentions.Select(mention => IsAsked(mention)
            ? mention with { Label = Line(mention, context.Labels[line++]) } : mention)];
    }

    private List<Mention> ForAll(List<Mention> mentions, LabelMention every)
    {
        List<Mention> asked = [.. mentions.Where(IsAsked)];
        bool clear = asked.Count == 1 && asked[0].Label is null
            && (every.Count == 0 || context.Labels.Length is 0 || every.Count == context.Labels.Length);
        if (!clear)
        {
            bool one = asked.Count == 1 && context.Labels.Length == 0;
            return one ? mentions
                : [.. mentions.Select(mention => IsAsked(mention) ? mention with { Doubt = Doubt.WhichOne } : mention)];
        }
        return [.. mentions.SelectMany(mention => mention != asked[0] ? [mention]
            : context.Labels.Length > 0 ? context.Labels.Select(label => mention with { Label = Line(mention, label) })
            : Enumerable.Repeat(mention, Math.Max(every.Count, 1)))];
    }

    private bool Contradicts(List<Mention> sameKind, List<Mention> everything)
    {
        List<Mention> unlabelled = [.. sameKind.Where(mention => mention.Label is null)];
        bool twice = sameKind.Where(mention => mention.Label is not null).GroupBy(mention => mention.Label!.Text,
            StringComparer.Ordinal).Any(group => group.Count() > 1);
        if (twice || (unlabelled.Count > 0 && unlabelled.Count < sameKind.Count && !unlabelled.TrueForAll(IsAt)))
        {
            return true;
        }
        return unlabelled.Count > 1 && !AreListed(unlabelled, everything) && !unlabelled.TrueForAll(IsAt);
    }

    private bool AreListed(List<Mention> unlabelled, List<Mention> everything)
    {
        bool mixed = unlabelled.Count == 2 && unlabelled[0].State != unlabelled[1].State;
        for (int i = 1; i < unlabelled.Count; i++)
        {
            // 208/230 is one supply; two values with a slash are not two readings.
            bool slash = unlabelled.Count == 2 && tokens[unlabelled[0].End].Is('/');
            if (slash || mixed || MayBeOneNumber(unlabelled[i - 1], unlabelled[i])
                || !gap.IsListed(unlabelled[i - 1], unlabelled[i]))
            {
                return false;
            }
        }
        return everything.Count >= unlabelled.Count;
    }

    private static bool AreAlike(Mention one, Mention other) =>
        one.Values.IsEmpty || other.Values.IsEmpty
            || (one.Values[0] <= 3 * other.Values[0] && other.Values[0] <= 3 * one.Values[0]);

    // "2 40" is 240 as a phone writes it down; numbers of three signs are complete.
    private bool MayBeOneNumber(Mention one, Mention other) => one.End == other.First && one.State == other.State
        && !(IsComplete(one) && IsComplete(other));

    private bool IsComplete(Mention mention) => tokens[mention.Number].IsWord || tokens[mention.Number].Length >= 3
        || mention.HasOwnUnit;

    // "118 psi at 52F" gives the temperature that goes with the pressure.
    private bool IsAt(Mention mention) =>
        mention.Units[0].Kind == QuantityKind.Temperature
            && (tokens[mention.First - 1].Is("at") || tokens[mention.First - 1].Is('@'));

    private bool IsAsked(Mention mention) => !mention.IsLoose
        && (mention.State != ReadingState.Number || mention.Units.IsEmpty
        || context.Asked is null || mention.Units.Any(unit => context.AsksLike(unit.Kind)));

    private static QuantityKind Family(QuantityKind kind) => Judged.AreAlike(kind, QuantityKind.Pressure)
        ? QuantityKind.Pressure : kind;

    private static LabelMention Line(Mention mention, string label) =>
        new(mention.First, mention.End, label, LabelKind.Asked);
}
