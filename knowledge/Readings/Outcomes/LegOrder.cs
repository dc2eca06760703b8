namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>
/// Asks about the order when three voltages without labels stand against the form: "119/120/239", legs first.
/// </summary>
internal static class LegOrder
{
    // Between the lines of a split supply stand two legs; less than so many times the larger one may be a faulty
    // supply. Common practice, no source.
    private const double Clear = 1.5;

    public static List<Judged> Settle(List<Judged> judged, ReadingContext context)
    {
        bool legs = context.Labels.Length == 3 && judged.Count == 3 && IsOfGround(context.Labels[1])
            && IsOfGround(context.Labels[2])
            && !IsOfGround(context.Labels[0]) && judged.TrueForAll(IsPositional);
        if (!legs)
        {
            return judged;
        }

        List<Judged> falling = [.. judged.OrderByDescending(Volts)];
        return falling[0] == judged[0] || Volts(falling[0]) < Clear * Volts(falling[1]) ? judged
            : [On(falling[0], context.Labels[0]),
                .. judged.Where(one => one != falling[0]).Select((one, place) => On(one, context.Labels[place + 1]))];
    }

    private static bool IsOfGround(string label) => label.EndsWith("ground", StringComparison.Ordinal);

    private static bool IsPositional(Judged one) =>
        one is { IsPlain: true, Mention: { State: ReadingState.Number, Label: { } label } mention }
        && label.First == mention.First && label.End == mention.End;

    private static double Volts(Judged one) => one.Meanings[0].Value;

    private static Judged On(Judged one, string label) => one with
    {
        Meanings = [one.Meanings[0] with { Label = label }], Reason = ReadingReason.Unsure,
    };
}
