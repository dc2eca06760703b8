namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Marks values that were said as the two ends of a range, which is not one reading.</summary>
internal static class Ranges
{
    public static void Mark(List<Mention> mentions, Gap gap)
    {
        for (int i = 1; i < mentions.Count; i++)
        {
            Mention one = mentions[i - 1];
            Mention other = mentions[i];
            bool numbers = one.State == ReadingState.Number && other.State == ReadingState.Number;
            bool alike = one.IsBare || other.IsBare || one.Units[0].Kind == other.Units[0].Kind;
            if (numbers && alike && gap.IsRange(one, other))
            {
                mentions[i - 1] = one with { Doubt = Doubt.Range, Units = one.IsBare ? other.Units : one.Units };
                mentions[i] = other with { Doubt = Doubt.Range };
            }
        }
    }
}
