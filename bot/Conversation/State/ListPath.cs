using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.State;

/// <summary>
/// The way through lists of troubles: an answer that only leads from one to the next enters nothing, and is taken back
/// by showing the list before it again.
/// </summary>
internal static class ListPath
{
    /// <summary>The lists that lie behind the question that is open now.</summary>
    public static ImmutableArray<OpenQuestion> After(CaseState state, OpenQuestion? now)
    {
        if (now is not null && state.Lists is [.., var behind] && IsSame(behind, now)) return state.Lists[..^1];
        bool goesOn = state.Question is { Kind: QuestionKind.Symptom }
            && now is { Kind: QuestionKind.Symptom or QuestionKind.Complaint } && !WasAnythingEntered(state);
        return goesOn && !IsSame(state.Question!, now!) ? state.Lists.Add(state.Question!) : state.Lists;
    }

    // In the turn that is being folded.
    private static bool WasAnythingEntered(CaseState state) =>
        state.AtMessage is { } begun && ReferenceEquals(state.Before, begun);

    private static bool IsSame(OpenQuestion one, OpenQuestion other) =>
        one.Kind == other.Kind && one.Text == other.Text && one.Options.SequenceEqual(other.Options);
}
