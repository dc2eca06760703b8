using System.Collections.Immutable;
using DxAssistant.Conversation.Told;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>How the phrase file says that people name the mode of a unit.</summary>
internal static class ModeWords
{
    private static ImmutableArray<string> Modes => UnitModes.All;

    /// <summary>The phrases that are such lists, and those that name the modes.</summary>
    public static ImmutableArray<string> Ids { get; } =
        [.. Modes.Select(mode => $"words-mode-{mode}"), .. Modes.Select(Phrase)];

    /// <summary>The mode that the whole message names; null when none.</summary>
    public static string? Find(PhraseBook phrases, string text)
    {
        string said = PlainWords.Joined(text);
        return Modes.FirstOrDefault(mode => phrases.Template($"words-mode-{mode}").Split(',')
            .Any(wording => PlainWords.Joined(wording) == said));
    }

    /// <summary>Whether an id is that of a mode.</summary>
    public static bool IsMode(string name) => Modes.Contains(name);

    /// <summary>The phrase that names a mode.</summary>
    public static string Phrase(string mode) => $"mode-{mode}";

    public static IEnumerable<(string, ToldThing)> Of(PhraseBook phrases) =>
        from mode in Modes
        from wording in phrases.Template($"words-mode-{mode}").Split(',')
        select (wording, (ToldThing)new ToldThing.Mode(mode));
}
