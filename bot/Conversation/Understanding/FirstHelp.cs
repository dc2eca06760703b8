using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// People first: who is hurt or in danger is told what to do before anything else that the message says.
/// </summary>
/// <remarks>
/// It finds no cause, so it is no evidence: the message goes on being understood, but for the pieces that tell of
/// somebody hurt.
/// </remarks>
internal sealed class FirstHelp
{
    private const string Hurt = "danger-hurt", Gassed = "danger-gassed", Splashed = "danger-splashed", Falling =
        "danger-falling", BareWires = "danger-bare-wires";

    private readonly Danger _danger;
    private readonly Clauses _clauses;
    private readonly HarmWords _harm;
    private readonly UrgentWordings<string> _wordings;

    /// <param name="danger">Where gas may be in the air no switch is named.</param>
    public FirstHelp(Library library, Danger danger)
    {
        _danger = danger;
        _clauses = new Clauses(library);
        _harm = new HarmWords(library);
        _wordings = new UrgentWordings<string>(library,
            from list in new (string Words, string Says)[] { ("words-splashed", Splashed), ("words-falling", Falling),
                ("words-bare-wires", BareWires) }
            from said in PhraseLists.Of(library.Phrases, list.Words)
            select (said, list.Says));
    }

    /// <summary>Whether a message tells of somebody in need of help.</summary>
    public bool IsTold(string text) => _clauses.Cut(text).Any(clause => HelpIn(clause) is not null);

    /// <summary>Says what helps whoever the message tells of.</summary>
    /// <returns>What else the message tells; empty when it is of nothing else.</returns>
    public string Hear(TurnDraft turn, string text)
    {
        string rest = text;
        var said = new List<string>();
        foreach (string clause in _clauses.Cut(text))
        {
            if (HelpIn(clause) is not { } help || !IsFor(turn, help)) continue;
            said.Add(help == Hurt && _danger.IsGasTold(text) ? Gassed : help);
            if (help is Hurt or Gassed or Splashed && rest.IndexOf(clause, StringComparison.Ordinal) is >= 0 and var at)
                rest = rest.Remove(at, clause.Length);
        }

        foreach (string help in said.Distinct()) turn.Say(SegmentKind.Caution, help);
        return PlainWords.IsEmpty(rest) ? "" : rest;
    }

    private string? HelpIn(string clause) =>
        _harm.IsOfGas(clause) ? Gassed : _harm.IsIn(clause) ? Hurt : _wordings.Find(clause);

    // Who works at such units for a living needs no word about a bare wire.
    private static bool IsFor(TurnDraft turn, string help) =>
        help != BareWires || turn.State.Role is null || turn.View.Role.Rank == 0;
}
