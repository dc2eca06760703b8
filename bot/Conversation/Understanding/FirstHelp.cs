using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Understanding;

/// <summary>People first: who is hurt or in danger is told what to do before anything else that the message says.</summary>
/// <remarks>It finds no cause, so it is no evidence: the message goes on being understood, but for the pieces that tell of somebody hurt.</remarks>
internal sealed class FirstHelp
{
    // Words, what is said about them, and whether it tells of a person: that is no trouble of the unit.
    private static readonly ImmutableArray<Help> All =
    [
        new("words-hurt", "danger-hurt", true, true), new("words-splashed", "danger-splashed", true, true),
        new("words-falling", "danger-falling", false, false), new("words-bare-wires", "danger-bare-wires", false, false),
    ];

    private readonly Clauses _clauses;
    private readonly UrgentWordings<Help> _wordings;

    public FirstHelp(Library library)
    {
        _clauses = new Clauses(library);
        _wordings = new UrgentWordings<Help>(library, from help in All
                                                      from said in library.Phrases.Template(help.Words).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                                                      select (said, help));
    }

    /// <summary>The phrases that are lists of words.</summary>
    public static ImmutableArray<string> Lists { get; } = [.. All.Select(help => help.Words)];

    /// <summary>Whether a message tells of somebody in need of help.</summary>
    public bool IsTold(string text) => _clauses.Cut(text).Any(clause => _wordings.Find(clause) is not null);

    /// <summary>Says what helps whoever the message tells of.</summary>
    /// <returns>What else the message tells; empty when it is of nothing else.</returns>
    public string Hear(TurnDraft turn, string text)
    {
        (string Clause, Help? Help)[] said = [.. _clauses.Cut(text).Select(clause => (clause, HelpIn(turn, clause)))];
        foreach (Help help in said.Select(piece => piece.Help).OfType<Help>().Distinct()) turn.Say(SegmentKind.Caution, help.Says);
        return said.Any(piece => piece.Help is { IsOfPerson: true })
            ? string.Join(", ", said.Where(piece => piece.Help is not { IsOfPerson: true }).Select(piece => piece.Clause))
            : text;
    }

    // Who works at such units for a living needs help, but no word about a bare wire.
    private Help? HelpIn(TurnDraft turn, string clause) =>
        _wordings.Find(clause) is { } help && (help.ForAll || turn.State.Role is null || turn.View.Role.Rank == 0) ? help : null;

    private sealed record Help(string Words, string Says, bool IsOfPerson, bool ForAll);
}
