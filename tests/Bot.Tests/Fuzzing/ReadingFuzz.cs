using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever people type as a reading.</summary>
internal sealed class ReadingFuzz() : FuzzPart("readings", 6_000, Read)
{
    private static readonly string[] Asked = ["", "resistance", "voltage", "temperature", "pressure", "suction",
        "capacitance", "humidity", "diode", "time", "kΩ", "superheat"];

    public override Task<IEnumerable<string>> BeginAsync() => Task.FromResult(Knowing.Said("readings"));

    private static string Read(string text)
    {
        string asked = Asked[(text.Length + (text.Length > 0 ? text[0] : 0)) % Asked.Length];
        Assert.True(AskedQuantity.TryContext(asked, out var context));
        switch (ReadingParser.Parse(text, context))
        {
            case ReadingResult.Readings taken:
                Assert.All(taken.List, reading => Assert.True(double.IsFinite(reading.Value)));
                Assert.All(taken.At, at => Assert.InRange(at.End, 1, text.Length));
                return $"{asked} {string.Join(',', taken.List.Take(4).Select(reading => $"{reading.State}{reading.Unit}"))} {taken.Unclear?.Reason}";
            case ReadingResult.AskBack ask: return $"{asked} ask {ask.Reason} {ask.Meanings.Length}";
            case ReadingResult.NotUnderstood none: return $"{asked} {none.Reason}";
            default: throw new InvalidOperationException("there are three results");
        }
    }
}
