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
        bool goesOn = state.Question is { Kind: QuestionKind.Symptom }
            && now is { Kind: QuestionKind.Symptom or QuestionKind.Complaint } && !WasAnythingEntered(state);
        if (!goesOn || IsSame(state.Question!, now!)) return state.Lists;
        return state.Lists is [.., var last] && IsSame(last, now!)
            ? state.Lists[..^1]
            : state.Lists.Add(state.Question!);
    }

    // In the turn that is being folded.
    private static bool WasAnythingEntered(CaseState state) =>
        state.AtMessage is { } begun && ReferenceEquals(state.Before, begun);

    private static bool IsSame(OpenQuestion one, OpenQuestion other) =>
        one.Kind == other.Kind && one.Text == other.Text && one.Options.SequenceEqual(other.Options);
}
