using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Languages;

namespace DxAssistant.Conversation.Languages;

/// <summary>The conversation in one language: its pages and phrases, and how its words are understood.</summary>
/// <param name="Beliefs">What is the same in all languages.</param>
internal sealed record Voice(Library Library, Speaker Speaker, Listener Listener, KnownBeliefs Beliefs)
{
    /// <summary>
    /// Puts what people say about readings and displays in the main language; null where it is the main one.
    /// </summary>
    public MainTongue? Tongue => Speaker.Tongue;
}
