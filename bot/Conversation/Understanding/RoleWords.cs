using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// What people say where it is asked who is there: "homeowner", "the hvac guy". Elsewhere such a word may name somebody
/// who is only spoken of.
/// </summary>
internal sealed class RoleWords(PhraseBook phrases)
{
    // Who may hurt themselves least by what they are led to is looked for first.
    private static readonly ImmutableArray<(string Phrase, string Role)> Lists =
        [("words-role-owner", "owner"), ("words-role-technician", "technician")];

    private readonly FrozenSet<string> _beside = PhraseLists.WordsOf(phrases, "words-role-beside")
        .ToFrozenSet(StringComparer.Ordinal);

    private readonly FrozenSet<string> _somebody = PhraseLists.Of(phrases, "words-somebody")
        .ToFrozenSet(StringComparer.Ordinal);

    private readonly ImmutableArray<(FrozenSet<string> Words, string Role)> _roles =
        [.. Lists.Select(
            list => (PhraseLists.Of(phrases, list.Phrase).ToFrozenSet(StringComparer.Ordinal), list.Role))];

    /// <summary>The role that words name, and nothing else; null when they name none or say more.</summary>
    public string? Find(string text)
    {
        string said = PlainWords.Joined(text), bare = Bare(text);
        return _roles.FirstOrDefault(list => list.Words.Contains(said) || list.Words.Contains(bare)
            || list.Words.Any(words => Bare(words) == bare && bare.Length > 0)).Role;
    }

    /// <summary>Whether words say that somebody is there, and not who: "just me".</summary>
    public bool SaysSomebody(string text) => PlainWords.Of(text).Any(_somebody.Contains) && Bare(text).Length == 0;

    private string Bare(string text) => string.Join(' ', PlainWords.Of(text).Where(word => !_beside.Contains(word)));
}
