using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>One figure on a scale: for every check that needs no more.</summary>
internal static class ScalePicture
{
    public static Drawn? Draw(Caption caption)
    {
        VerdictFacts facts = caption.Facts;
        ExpectedBand band = facts.Expected[0];
        if (Figures.Limits(band).Length == 0) return null;
        Reading? unread = facts.Readings.FirstOrDefault(reading => reading.State != ReadingState.Number);
        string found = band.Found is { } value ? OfReading(facts, band) ?? Figures.Of(value)
            : unread is null ? "" : Figures.Of(unread);
        (Sign, string)[] key = [(Sign.Found, $"{band.Name} {found}"), .. caption.Doubt(band), caption.Expected(band)];
        var pen = new Pen(300, 4 + Strip.Height + Key.Height(key, 300));
        Strip.Draw(pen, 0, band, unread?.State ?? ReadingState.Number);
        Key.Draw(pen, Strip.Height, key);
        return caption.Finish(pen, "scale", "picture-scale", ("name", band.Name), ("found", found),
            ("side", caption.Side), ("band", Figures.Limits(band)));
    }

    // A figure that is itself a reading is shown as it was read.
    private static string? OfReading(VerdictFacts facts, ExpectedBand band)
    {
        int place = Enumerable.Range(0, facts.Readings.Length).FirstOrDefault(i => facts.Label(i) == band.Name, -1);
        return place < 0 ? null : Figures.Of(facts.Readings[place]);
    }
}
