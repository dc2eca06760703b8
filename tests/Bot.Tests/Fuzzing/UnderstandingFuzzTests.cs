using DxAssistant.Conversation.Sheets;
using DxAssistant.Knowledge.Glyphs;
using DxAssistant.Knowledge.Readings;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever people type, readings and codes are taken without a fault.</summary>
public sealed class UnderstandingFuzzTests(ITestOutputHelper output)
{
    private static readonly string[] Asked = ["", "resistance", "voltage", "temperature", "pressure", "suction", "capacitance", "humidity", "diode", "time", "kΩ", "superheat"];

    [Fact]
    public Task Readings_AnyText_AreTaken() => new FuzzRun(output, "readings", few: 6_000)
        .RunAsync(Knowing.Said("readings"), TextChanges.Make, text => Task.FromResult(Read(text)));

    [Fact]
    public Task Codes_AnyText_AreTaken() => new FuzzRun(output, "codes", few: 3_000)
        .RunAsync(Knowing.Said("glyphs"), TextChanges.Make, text => Task.FromResult(Spell(text)));

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

    private static string Spell(string text)
    {
        if (text.Length > SaidWords.Longest) text = text[..SaidWords.Longest];
        bool found = GlyphReader.TryFind(text, out _, out var span);
        if (found) Assert.InRange(span.End, 1, text.Length);
        var reading = GlyphReader.Read(text);
        string read = reading.Canonical;
        return $"{found} {GlyphReader.TrySpell(text, out _)} {GlyphReader.TryRead(text, out _)} {read.Length} {(read.Length > 0 ? read[0] : ' ')}";
    }
}
