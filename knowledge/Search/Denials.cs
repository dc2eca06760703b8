using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>What a message rules out, as faults and checks.</summary>
internal static class Denials
{
    public static ImmutableArray<DeniedMention> Of(ClauseReading reading, SearchIndex index)
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
