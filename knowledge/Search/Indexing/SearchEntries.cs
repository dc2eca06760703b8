using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Pages and glossary of a library, as the search takes them.</summary>
public static class SearchEntries
{
    public static ImmutableArray<SearchEntry> From(Library library) =>
    [
        .. Faults(library.Faults.Values),
        .. library.Symptoms.Values.Select(page =>
            Entry(NodeKind.Symptom, page.Id.Value, page.Title, page.SaidAs, [page.Summary])),
        .. library.Checks.Values.Select(page => Entry(NodeKind.Check, page.Id.Value, page.Title, [], [page.Ask])),
        .. library.Refusals.Values.Select(page =>
            Entry(page.Unsafe ? NodeKind.Refusal : NodeKind.OffTopic, page.Id, page.Title, page.SaidAs, [])),
        .. library.Refusals.Values.Where(page => !page.SoundsAlike.IsEmpty).Select(Harmless),
        .. library.Series.Values.Select(page =>
            Entry(NodeKind.Series, page.Id, page.Title, page.SaidAs, [page.Summary])),
    ];

    public static ImmutableArray<SynonymGroup> Glossary(Library library) =>
        [.. library.Glossary.Select(entry => new SynonymGroup(entry.Concept, entry.AlsoSaidAs, entry.OftenMisspelt))];

    private static IEnumerable<SearchEntry> Faults(IEnumerable<FaultPage> all)
    {
        ILookup<FaultId?, FaultPage> varieties = all.ToLookup(page => page.VarietyOf);
        return varieties[null].Select(page => Of(page, [.. varieties[page.Id]]));
    }

    /// <summary>A fault with its varieties: what people say of one of them finds the fault.</summary>
    private static SearchEntry Of(FaultPage page, ImmutableArray<FaultPage> varieties) =>
        Entry(NodeKind.Fault, page.Id.Value, page.Title,
            [.. page.SaidAs, .. varieties.SelectMany(other => other.SaidAs.Prepend(other.Title))],
            [page.Summary, .. page.Seen, .. page.Measured, page.Proof,
                .. varieties.SelectMany(other => other.Seen.Prepend(other.Summary))]);

    /// <summary>What only sounds like a danger: the page's own title, which names the danger, is none of it.</summary>
    private static SearchEntry Harmless(RefusalPage page) =>
        Entry(NodeKind.Harmless, page.Id, page.SoundsAlike[0], page.SoundsAlike.RemoveAt(0), []);

    private static SearchEntry Entry(
        NodeKind kind, string id, Passage title, ImmutableArray<Passage> saidAs, ImmutableArray<Passage> body) =>
        new(kind, id, title.Text, [.. saidAs.Select(phrase => phrase.Text)],
            string.Join('\n', body.Select(passage => passage.Text)));
}
