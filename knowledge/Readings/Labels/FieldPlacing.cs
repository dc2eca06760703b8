using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Puts values onto the lines of a form whose kinds tell them apart: "10.2k at 24C" on resistance,
/// temperature.</summary>
internal sealed class FieldPlacing(TokenList tokens, ReadingContext context, Gap gap)
{
    public void Place(List<Mention> mentions)
    {
        if (context.Fields.IsEmpty)
        {
            return;
        }
        FreeTheWrong(mentions);
        ByPlace(mentions);
        ByKind(mentions);
        if (context.IsMixed)
        {
            InOrder(mentions);
        }
        TheRest(mentions);
    }

    /// <summary>Again, now that bare numbers have units.</summary>
    public void PlaceSettled(List<Mention> mentions)
    {
        if (context.IsMixed)
        {
            ByKind(mentions);
        }
    }

    // "Suction line 52F" on a form with a pressure called suction and a temperature called suction pipe.
    private void FreeTheWrong(List<Mention> mentions)
    {
        for (int i = 0; i < mentions.Count; i++)
        {
            bool wrong = IsAskedLabel(mentions[i]) && !mentions[i].IsBare && mentions[i].State == ReadingState.Number
                && context.Of(mentions[i].Label).Asked is { } kind
                && !mentions[i].Units.Any(unit => Outcomes.Judged.AreAlike(unit.Kind, kind));
            mentions[i] = wrong ? mentions[i] with { Label = null } : mentions[i];
        }
    }

    // "35 out air", "ambient 95", "head 350 psig": the place that one line is called after.
    private void ByPlace(List<Mention> mentions)
    {
        for (int i = 0; i < mentions.Count; i++)
        {
            if (mentions[i].Label is { NamesTerminals: false } label && !IsAskedLabel(mentions[i])
                && mentions.Count(mention => mention.Label?.Text == label.Text) == 1
                && context.Fields.Where(field => IsAt(field, label)).ToArray() is [var only] && !IsTaken(only, mentions)
                && (mentions[i].IsBare || mentions[i].Units.All(unit => IsAlike(only, unit.Kind))))
            {
                mentions[i] = mentions[i] with { Label = label with { Text = only.Label, Kind = LabelKind.Asked } };
            }
        }
    }

    private static bool IsAt(AskedField field, LabelMention label)
    {
        string[] words = field.Label.ToLowerInvariant().Split(' ');
        return label switch
        {
            { Kind: LabelKind.Air } =>
                words.Contains("air") && words.Contains(label.Text == "ambient" ? "outdoor" : label.Text),
            { Text: "head" or "high side" } => words is ["high", "side"],
            { Text: "low side" } => words is ["suction"],
            _ => false,
        };
    }

    // One value of a kind and one line of it.
    private void ByKind(List<Mention> mentions)
    {
        foreach (AskedField field in context.Fields.Where(field =>
            context.Fields.Count(other => IsAlike(other, field.Unit.Kind)) == 1))
        {
            List<int> fitting = [.. Enumerable.Range(0, mentions.Count).Where(i => IsOf(mentions[i], field))];
            if (fitting.Count == 1 && !IsTaken(field, mentions) && Agrees(mentions[fitting[0]].Label, field))
            {
                Put(mentions, fitting[0], field);
            }
        }
    }

    // As many bare values as lines, in their order.
    private void InOrder(List<Mention> mentions)
    {
        bool bare = mentions.Count == context.Fields.Length
            && mentions.TrueForAll(mention => mention.IsBare && mention.Label is null);
        for (int i = 0; i < mentions.Count && bare; i++)
        {
            bare = i == 0 || gap.IsListed(mentions[i - 1], mentions[i]);
        }
        for (int i = 0; i < mentions.Count && bare; i++)
        {
            Put(mentions, i, context.Fields[i]);
        }
    }

    // The last value without a label belongs on the last open line.
    private void TheRest(List<Mention> mentions)
    {
        List<AskedField> open = [.. context.Fields.Where(field => !IsTaken(field, mentions))];
        List<int> free = [.. Enumerable.Range(0, mentions.Count).Where(i => mentions[i].Label is null)];
        bool last = open.Count == 1 && free.Count == 1 && mentions.Count > 1 && mentions.Count == context.Fields.Length;
        if (last && (mentions[free[0]].IsBare || mentions[free[0]].Units.Any(unit => IsAlike(open[0], unit.Kind))))
        {
            Put(mentions, free[0], open[0]);
        }
    }

    private bool IsOf(Mention mention, AskedField field)
    {
        bool at = mention.IsBare && mention.Label is null
            && (tokens[mention.First - 1].Is("at") || tokens[mention.First - 1].Is('@'));
        return !IsAskedLabel(mention) && (mention.IsBare
            ? at && field.Unit.Kind == QuantityKind.Temperature
            : mention.Units.All(unit => IsAlike(field, unit.Kind)));
    }

    private bool IsAskedLabel(Mention mention) => mention.Label is { } label
        && context.Fields.Any(field => field.Label == label.Text);

    private static bool IsTaken(AskedField field, List<Mention> mentions) =>
        mentions.Exists(mention => mention.Label?.Text == field.Label);

    // "Room sensor 10.2k" fits a line called resistance; "indoor 72" does not fit one called outdoor air.
    private static bool Agrees(LabelMention? label, AskedField field)
    {
        string[] words = field.Label.ToLowerInvariant().Split(' ', '-', '–');
        return label is null
            || (!label.NamesTerminals && (!words.Any(Places.IsPlace) || label.Text.Split(' ').Any(words.Contains)));
    }

    private static bool IsAlike(AskedField field, QuantityKind kind) => Outcomes.Judged.AreAlike(field.Unit.Kind, kind);

    private static void Put(List<Mention> mentions, int at, AskedField field) =>
        mentions[at] = mentions[at] with { Label = new LabelMention(mentions[at].First, mentions[at].End, field.Label,
            LabelKind.Asked) };
}
