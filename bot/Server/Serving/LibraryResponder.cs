using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Serving;

/// <summary>The core on one version of the content.</summary>
internal sealed class LibraryResponder : IStandingResponder
{
    private readonly Assistant assistant;

    /// <param name="late">Whether the search is left for later, while taps are answered already.</param>
    public LibraryResponder(Library library, bool late = false) => assistant = new Assistant(library, late);

    /// <summary>Makes the search in the background.</summary>
    public void GetReady() => Task.Run(assistant.GetReady);

    public Turn Respond(ImmutableArray<CaseEvent> log, Message message) =>
        Respond(Fold.Apply(CaseState.New, log), message);

    public Turn Respond(CaseState state, Message message) => assistant.Take(state, message);
}
