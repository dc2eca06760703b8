using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>What a message rules out, as faults and checks.</summary>
internal static class Denials
{
    /// <summary>From this probability on words are held to be about a fault; set on the development phrases.</summary>
    private const double Meant = 0.5;

    /// <summary>
    /// From this probability on the complaint tells of a fault, even if it names nothing of it that is not ruled out.
    /// </summary>
    private const double Told = 0.8;

    public static ImmutableArray<DeniedMention> Of(HeardMessage heard, SearchIndex index)
    {
        if (heard.Reading.RuledOut.IsEmpty)
            return [];
        var terms = heard.Reading.Complaint.Where(token => token.Role == TokenRole.Main).Select(token => token.Term)
            .ToHashSet(StringComparer.Ordinal);
        var denied = new Dictionary<(NodeKind, string), (DeniedMention Mention, bool IsOutright)>();
        var named = new Dictionary<(NodeKind, string), HashSet<string>>();
        foreach (var mention in heard.Reading.RuledOut)
        {
            var said = string.Join(' ', mention.Tokens.OrderBy(token => token.Position).Select(token => token.Said)
                .Distinct());
            foreach (var entry in index.Naming(mention, terms).Concat(Likeliest(mention, index)))
            {
                var at = (entry.Kind, entry.Id);
                denied[at] = (new DeniedMention(entry.Kind, entry.Id, said), mention.IsOutright
                    || denied.GetValueOrDefault(at).IsOutright);
                if (!named.TryAdd(at, [.. mention.Tokens.Select(token => token.Term)]))
                    named[at].UnionWith(mention.Tokens.Select(token => token.Term));
            }
        }
        var complained = Complained(heard, index, denied.Keys);
        if (complained is { Probability: < Told }
            && named.TryGetValue((NodeKind.Fault, complained.Entry.Id), out var own)
            && !index.IsTitledBy(complained.Entry, terms.Except(own)))
            complained = null;
        return
        [
            .. denied.Values.Where(mention => mention.IsOutright || mention.Mention.Kind != NodeKind.Fault
                || mention.Mention.Id != complained?.Entry.Id)
                .Select(mention => mention.Mention).OrderBy(mention => mention.Kind)
                .ThenBy(mention => mention.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>
    /// "filters are clean, but the fins are packed with muck": the fault that all the rest tells of is not ruled out by
    /// words that it shares with what is, if it names more of that fault.
    /// </summary>
    private static SearchHit? Complained(HeardMessage heard, SearchIndex index,
        IReadOnlyCollection<(NodeKind Kind, string Id)> denied) =>
        index.NamesPart(heard.Reading.Complaint)
            && heard.Faults.MaxBy(hit => hit.Probability) is { Probability: >= Meant } likeliest
            && heard.Faults.All(hit => hit.Score <= likeliest.Score || denied.Contains((NodeKind.Fault, hit.Entry.Id)))
            ? likeliest
            : null;

    /// <summary>"the handset is mint": the fault that a part alone brings to mind, by whatever name.</summary>
    private static IEnumerable<SearchEntry> Likeliest(RuledOut mention, SearchIndex index) =>
        index.LikeliestFault(
            [.. mention.Tokens.Where(token => !States.IsWell(token.Term) && !States.Done.Contains(token.Said))
                .Select(Affirmed)]) is { } hit
            && hit.Probability >= Meant ? [hit.Entry] : [];

    private static Token Affirmed(Token token) => token with { Term = token.Stem, Role = TokenRole.Main };
}
