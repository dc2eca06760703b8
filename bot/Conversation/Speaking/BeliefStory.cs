using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Conversation.Speaking;

/// <summary>How the faults in question narrowed over a case, as a picture.</summary>
public static class BeliefStory
{
    // Below this a fault is no longer in question; what is not drawn is not kept either.
    private const double Faint = 0.0005;

    /// <summary>The picture; null while nothing has narrowed yet.</summary>
    /// <exception cref="ArgumentException">The phrase file lacks a phrase of the picture.</exception>
    public static Picture? Of(Library library, CaseState state)
    {
        var words = new SpokenPictures(new Speaker(library.Phrases));
        return BeliefPicture.Of(Steps(new CaseView(library, state)), Title(library), words) is { } drawn
            ? SpokenPictures.Shown(drawn, new Provenance.Calculation("belief", library.Version))
            : null;
    }

    private static Func<string, string> Title(Library library) =>
        fault => library.Faults[new FaultId(fault)].Title.Text;

    // The symptoms are one step: they are what the walk begins with.
    private static ImmutableArray<BeliefStep> Steps(CaseView view)
    {
        ImmutableArray<Evidence> evidence = [.. view.Evidence];
        int symptoms = evidence.Count(one => one is Evidence.SymptomReported);
        return symptoms == 0
            ? []
            : [.. Enumerable.Range(symptoms, evidence.Length - symptoms + 1).Select(count => new BeliefStep(
                view.Learnt(count == symptoms ? evidence[..symptoms] : [evidence[count - 1]]),
                Shares(view.BeliefAfter(evidence[..count]))))];
    }

    private static ImmutableSortedDictionary<string, double> Shares(Belief belief) => belief.Ranked
        .Where(ranked => ranked.Probability >= Faint)
        .ToImmutableSortedDictionary(ranked => ranked.Id.Value, ranked => ranked.Probability, StringComparer.Ordinal);
}
