using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Serials;

/// <summary>Checks serial numbers against the patterns that the pages of the series state.</summary>
public sealed class SerialBook
{
    private readonly ImmutableSortedDictionary<string, SerialPattern> patterns;

    public SerialBook(Library library) => patterns = library.Series.Values
        .Select(page => (page.Id, Pattern: Of(page))).Where(pair => pair.Pattern is not null)
        .ToImmutableSortedDictionary(pair => pair.Id, pair => pair.Pattern!, StringComparer.Ordinal);

    /// <summary>What a typed number is.</summary>
    /// <param name="series">The series it is said to be of; null while none is known.</param>
    public SerialAnswer Check(string typed, string? series)
    {
        if (series is not null && !patterns.ContainsKey(series)) return new SerialAnswer.Unknown();
        if (series is not null && patterns[series].Read(typed) is { } fits) return new SerialAnswer.Fits(fits);
        foreach (var (id, pattern) in patterns)
            if (id != series && pattern.Read(typed) is { } found) return new SerialAnswer.OfAnother(found, id);
        return series is null
            ? new SerialAnswer.Unknown()
            : new SerialAnswer.Wrong(patterns[series].Example, patterns[series].Guess(typed));
    }

    private static SerialPattern? Of(SeriesPage page) =>
        page is { Serial: { } form, SerialExample: { } example } ? SerialPattern.TryMake(form, example) : null;
}
