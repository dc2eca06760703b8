using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads a table of words and their values.</summary>
internal static class WordTable
{
    /// <summary>The words with a readable value; the first of two equal words counts.</summary>
    public static ImmutableSortedDictionary<string, double> Read(PipeTable? table)
    {
        var words = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (TableRow row in table?.Rows ?? [])
        {
            string? word = row.Cell(table!.Column("Word"))?.Text;
            if (word is { Length: > 0 } && Number.Read(row.Cell(table.Column("Value"))?.Text) is { } value)
            {
                words.TryAdd(word, value);
            }
        }

        return words.ToImmutable();
    }
}
