using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Says every message of stored cases again, on the old pages and on the new.</summary>
internal sealed class CaseReplay(Library before, Library after)
{
    private readonly Assistant old = new(before);
    private readonly Assistant fresh = new(after);

    /// <summary>What became of a case; null when it ends alike.</summary>
    public ChangedConclusion? Compare(string id, IEnumerable<StoredEvent> log)
    {
        Said[] said = [.. log.Select(stored => stored.Event).OfType<Said>()];
        CaseState first = CaseState.New, second = CaseState.New;
        int parted = 0;
        for (int place = 0; place < said.Length; place++)
        {
            first = Take(old, first, said[place]);
            second = Take(fresh, second, said[place]);
            if (parted == 0 && first.Question?.Subject != second.Question?.Subject) parted = place + 1;
        }

        (string one, string other) = (Conclusion(before, first), Conclusion(after, second));
        return one == other ? null : new ChangedConclusion(id, one, other, parted);
    }

    private static CaseState Take(Assistant assistant, CaseState state, Said said) =>
        Fold.Apply(state, assistant.Take(state, new Message(said.TurnId, said.Body, said.By)).Events);

    // The ending, or else the fault that leads: it is what the person would be told next.
    private static string Conclusion(Library library, CaseState state)
    {
        if (state.ClosedHow is { } how)
            return state.Repairs.LastOrDefault(tried => tried.Works) is { } repair ? $"{how}: {repair.Repair}" : how;
        return Likeliest(library, state) is { } fault ? $"open: {fault}" : "open";
    }

    private static string? Likeliest(Library library, CaseState state)
    {
        ImmutableArray<Graph.Evidence> evidence = [.. Evidence(library, state)];
        if (evidence.IsEmpty) return null;
        ImmutableHashSet<FaultId> applicable = [.. library.Faults.Values
            .Where(page => page.Series.IsEmpty || (state.Series is { } here && page.Series.Contains(here)))
            .Select(page => page.Id)];
        Graph.RankedFault first = library.Graph.Believe(evidence, applicable).Ranked[0];
        return string.Create(CultureInfo.InvariantCulture, $"{first.Id} {first.Probability * 100:0} %");
    }

    private static IEnumerable<Graph.Evidence> Evidence(Library library, CaseState state)
    {
        foreach (ReportedSymptom symptom in state.Symptoms)
            yield return new Graph.Evidence.SymptomReported(new SymptomId(symptom.Symptom), symptom.Confidence);
        foreach (SeenResult result in state.Results)
            yield return new Graph.Evidence.OutcomeSeen(new CheckId(result.Check), result.Weights);
        foreach (Graph.Evidence made in DoneWork.Says(library, state)) yield return made;
    }
}
