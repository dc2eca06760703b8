using DxAssistant.Conversation.Sheets;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever people type as a code of a display.</summary>
internal sealed class CodeFuzz() : FuzzPart("codes", 3_000, Spell)
{
    public override Task<IEnumerable<string>> BeginAsync() => Task.FromResult(Knowing.Said("glyphs"));

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
