using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases;

/// <summary>A core that needs to know no more of a case than where it stands.</summary>
public interface IStandingResponder : IResponder
{
    /// <summary>Works out the turn that a message leads to. The same state and message give the same turn.</summary>
    /// <param name="state">The fold of the case's log.</param>
    Turn Respond(CaseState state, Message message);
}
