using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Cases.Brought;

/// <summary>Whose name stands in turns taken away: a device that did not know who holds it writes the nameless one, and
/// whoever brings the turns signs them.</summary>
internal static class Signature
{
    private static readonly string Nameless = new Message("", new MessageBody.Opening()).By;

    /// <summary>The name of somebody else in a turn; null when the turn is the bringer's own.</summary>
    public static string? Other(BroughtTurn turn, string by) =>
        turn.Events.OfType<Said>().FirstOrDefault(said => said.By != by && said.By != Nameless)?.By;

    /// <summary>The same events, said by whoever brings them.</summary>
    public static ImmutableArray<CaseEvent> Of(ImmutableArray<CaseEvent> events, string by) =>
        [.. events.Select(happened => happened is Said said ? said with { By = by } : happened)];
}
