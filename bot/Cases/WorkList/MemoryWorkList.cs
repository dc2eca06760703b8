using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.WorkList;

/// <summary>The work list of cases in memory. Not safe to use from many threads at once.</summary>
internal sealed class MemoryWorkList
{
    private readonly Dictionary<string, Kept> cases = new(StringComparer.Ordinal);
    private long appends;

    private sealed record Kept(WorkLine Line, bool HasTitle, long Order, ImmutableSortedSet<string> Words);

    public void Add(string caseId, DateTimeOffset at, ImmutableArray<CaseEvent> events)
    {
        var facts = WorkFacts.Of(events);
        var kept = cases.GetValueOrDefault(caseId)
            ?? new Kept(new WorkLine(caseId, "", null, null, null, at, at), false, 0,
                ImmutableSortedSet.Create<string>(StringComparer.Ordinal));
        var line = kept.Line with
        {
            Title = kept.HasTitle ? kept.Line.Title : facts.Title ?? "", Series = facts.Series ?? kept.Line.Series,
            Fault = facts.Fault ?? kept.Line.Fault, Ended = facts.IsAside ? kept.Line.Ended : facts.Ended, LastAt = at,
        };
        cases[caseId] = new Kept(
            line, kept.HasTitle || facts.Title is not null, ++appends, kept.Words.Union(WorkWords.Split(facts.Words)));
    }

    /// <summary>Begins a case anew from its log, at its old place in the list.</summary>
    /// <param name="title">Instead of the one in the log; null for that one.</param>
    public void Replace(string caseId, ImmutableArray<StoredEvent> log, string? title = null)
    {
        long? place = cases.Remove(caseId, out var old) ? old.Order : null;
        foreach (var (at, events) in WorkFacts.Turns(log)) Add(caseId, at, events);
        var anew = cases[caseId];
        cases[caseId] = anew
            with { Order = place ?? anew.Order, Line = title is null ? anew.Line : anew.Line with { Title = title } };
    }

    public WorkPage Search(WorkQuery query)
    {
        var terms = WorkWords.Terms(query.Text);
        var found = cases.Values.Where(kept => (kept.HasTitle || !terms.IsEmpty) && Fits(kept.Line, query)
            && terms.All(term => Has(kept.Words, term)));
        var rest = Ordered(found, query.Order)
            .Where(kept => query.After is not { } place || IsBehind(kept, place, query.Order));
        return WorkPage.Of([.. rest.Take(query.Limit == int.MaxValue ? query.Limit : query.Limit + 1)
            .Select(kept => (kept.Line, kept.Order))], query);
    }

    private static bool IsBehind(Kept kept, WorkPlace place, WorkOrder order)
    {
        if (order == WorkOrder.Oldest) return kept.Order > place.At;
        string? key = WorkPage.KeyOf(kept.Line, order);
        int compared = (key is null, place.Key is null) switch
        {
            (false, false) => string.CompareOrdinal(key, place.Key),
            (var last, var before) => last.CompareTo(before),
        };
        return compared > 0 || (compared == 0 && kept.Order < place.At);
    }

    private static bool Fits(WorkLine line, WorkQuery query) =>
        (query.Series is null || line.Series == query.Series) && (query.Fault is null || line.Fault == query.Fault)
            && (query.Open is null || query.Open == line.Ended is null);

    private static bool Has(ImmutableSortedSet<string> words, string term)
    {
        if (words.Contains(term)) return true;
        int after = ~words.IndexOf(term);
        return term.Length > 1 && after >= 0 && after < words.Count
            && words[after].StartsWith(term, StringComparison.Ordinal);
    }

    private static IEnumerable<Kept> Ordered(IEnumerable<Kept> found, WorkOrder order) => order switch
    {
        WorkOrder.Oldest => found.OrderBy(kept => kept.Order),
        WorkOrder.Series => By(found, line => line.Series),
        WorkOrder.Fault => By(found, line => line.Fault),
        _ => found.OrderByDescending(kept => kept.Order),
    };

    private static IEnumerable<Kept> By(IEnumerable<Kept> found, Func<WorkLine, string?> key) =>
        found.OrderBy(kept => key(kept.Line) is null).ThenBy(kept => key(kept.Line), StringComparer.Ordinal)
            .ThenByDescending(kept => kept.Order);
}
