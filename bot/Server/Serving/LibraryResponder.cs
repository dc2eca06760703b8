using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Serving;

/// <summary>The core on one version of the content.</summary>
internal sealed class LibraryResponder(Library library) : IResponder
{
    private readonly Assistant assistant = new(library);

    public Turn Respond(ImmutableArray<CaseEvent> log, Message message) =>
        assistant.Take(Fold.Apply(CaseState.New, log), message);
}
