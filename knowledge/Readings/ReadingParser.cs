using DxAssistant.Knowledge.Readings.Labels;
using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Outcomes;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings;

/// <summary>Finds the readings in what a technician typed or dictated.</summary>
/// <remarks>
/// A number is taken only if it can mean one thing. Everything else is asked back, because a confidently wrong number
/// condemns a good part. The work is in proportion to the length of the message.
/// </remarks>
public static class ReadingParser
{
    /// <summary>Reads a message in the light of what was asked. Never throws, whatever the text.</summary>
    public static ReadingResult Parse(string text, ReadingContext context) => Parse(text, context, out _);

    /// <param name="work">How often a token of the message was looked at.</param>
    internal static ReadingResult Parse(string text, ReadingContext context, out long work)
    {
        TokenList tokens = Lexer.Cut(text);
        ReadingResult result = Parse(tokens, context);
        work = tokens.Looks;
        return result;
    }

    private static ReadingResult Parse(TokenList tokens, ReadingContext context)
    {
        var setting = Setting.Of(tokens);
        (IReadOnlyList<LabelMention> labels, bool[] taken) = LabelScanner.Scan(tokens, context);
        List<Mention> found = new MentionScanner(tokens, taken, context, setting).Scan();
        var around = new Surroundings(tokens, taken, found);
        (List<Mention> left, bool anyExpected) = new Sieve(tokens, taken, context, setting).Sift(found);

        bool placed = Labelling.Apply(tokens, labels, left);
        var gap = new Gap(tokens, taken);
        Differences.MarkKelvins(left, tokens, context);
        var placing = new FieldPlacing(tokens, context, gap);
        placing.Place(left);
        new UnitSharing(tokens, taken, gap, context, setting).Share(left);
        Ranges.Mark(left, gap);
        Differences.Mark(left, tokens, context);
        List<Mention> settled = new BareNumbers(tokens, context, gap, around).Settle(left);
        placing.PlaceSettled(settled);
        LabelMention? all = labels.FirstOrDefault(label => label.Kind == LabelKind.All);
        List<Mention> assigned = new Assignment(tokens, context, gap, all).Assign(settled);

        Judged Judged(Mention mention) =>
            new Judge(tokens, context.Of(mention.Label)).Of(placed ? mention : Unplaced(mention));
        List<Judged> judged = [.. assigned.Select(Judged)];
        List<Judged> onForm = context.Fields.IsEmpty
            ? judged
            : LegOrder.Settle(new OneScale(Judged).Settle(judged), context);
        return new Verdicts(tokens, context).Of(onForm, anyExpected);
    }

    private static Mention Unplaced(Mention mention) => mention.Doubt == Doubt.None
        ? mention with { Doubt = Doubt.WhichOne } : mention;
}
