using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>What a message rules out, as faults and checks.</summary>
internal static class Denials
{
    /// <summary>From this probability on the complaint is held to be about a fault; set on the development phrases.</summary>
    private const double Meant = 0.5;

    public static ImmutableArray<DeniedMention> Of(ClauseReading reading, SearchIndex index)
    {
        var denied = Named(reading, index);
        return denied.Any(mention => mention.Kind == NodeKind.Fault) && Complained(reading, index, denied) is { } fault
            ? denied.RemoveAll(mention => mention.Kind == NodeKind.Fault && mention.Id == fault)
            : denied;
    }

    /// <summary>"filters are clean, but the fins are packed with muck": the fault that all the rest tells of is not ruled out by
    /// words that it shares with what is.</summary>
    private static string? Complained(ClauseReading reading, SearchIndex index, ImmutableArray<DeniedMention> denied)
    {
        var faults = index.Find(index.Ask(reading.Complaint), NodeKind.Fault);
        var likeliest = faults.MaxBy(hit => hit.Probability);
        return likeliest is { Probability: >= Meant } && denied.Any(mention => mention.Id == likeliest.Entry.Id)
            && faults.All(hit => hit.Score <= likeliest.Score || denied.Any(mention => mention.Id == hit.Entry.Id))
            ? likeliest.Entry.Id
            : null;
    }

    private static ImmutableArray<DeniedMention> Named(ClauseReading reading, SearchIndex index)
    {
        var complaint = reading.Complaint.Where(token => token.Role == TokenRole.Main).Select(token => token.Term).ToHashSet(StringComparer.Ordinal);
        var denied = new Dictionary<(NodeKind, string), DeniedMention>();
        foreach (var mention in reading.RuledOut)
        {
            var said = string.Join(' ', mention.Tokens.OrderBy(token => token.Position).Select(token => token.Said).Distinct());
            foreach (var entry in index.Naming(mention, complaint))
                denied.TryAdd((entry.Kind, entry.Id), new DeniedMention(entry.Kind, entry.Id, said));
        }
        return [.. denied.Values.OrderBy(mention => mention.Kind).ThenBy(mention => mention.Id, StringComparer.Ordinal)];
    }
}
