using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Languages;

/// <summary>A section that another language may say.</summary>
/// <param name="Counted">True when it must have as many items or rows as on the main page.</param>
/// <param name="Keys">Columns that must read as on the main page: ids and signs.</param>
/// <param name="Texts">Columns that are said; the column <c>Shown as</c> says the first key.</param>
internal sealed record TranslatedPart(
    string Heading, bool Counted, ImmutableArray<string> Keys, ImmutableArray<string> Texts)
{
    /// <summary>The column that gives a key other words on the screen.</summary>
    public const string ShownAs = "Shown as";

    /// <summary>
    /// The section, or the column, with what people say. It is not said again but said anew, and may be left out.
    /// </summary>
    public const string SaidAs = "Said as";

    public static TranslatedPart Words(string heading) => new(heading, false, [], []);

    public static TranslatedPart List(string heading) => new(heading, true, [], []);

    public static TranslatedPart Table(string heading, string[] keys, params string[] texts) =>
        new(heading, true, [.. keys], [.. texts]);

    /// <summary>The column of the main page that a column of the other page says.</summary>
    public string ColumnFor(string head) => head == ShownAs && !Keys.IsEmpty ? Keys[0] : head;
}
