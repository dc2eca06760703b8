using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Benchmarks.Matching;

/// <summary>Made-up fault pages, as many as wanted: the same ones at every run.</summary>
/// <remarks>
/// A word's frequency falls with its place, as in any text (Zipf, Human Behavior and the Principle of Least Effort,
/// 1949); one page in ten brings a new word.
/// </remarks>
internal sealed class GrowingPages
{
    private const int Wordings = 2, WordsOfWording = 6, WordsOfBody = 20, LeastWords = 500;
    private static readonly string[] Starts =
        ["ba", "do", "fi", "ge", "hu", "ka", "lo", "mi", "nu", "pe", "ra", "so", "tu", "ve", "wi", "zo"];
    private static readonly string[] Ends = ["ndel", "rkin", "stom", "lvar", "mbor", "ctal", "ppen", "ddor", "ggim",
        "ffal", "rren", "ssov", "ttul", "zzek", "nnib", "lloc"];

    private readonly int words;
    private uint state = 20_260_101;

    /// <param name="pages">How many pages.</param>
    public GrowingPages(int pages)
    {
        words = LeastWords + (pages / 10);
        All = [.. Enumerable.Range(0, pages).Select(Page)];
    }

    public ImmutableArray<SearchEntry> All { get; }

    /// <summary>Messages that take their words from pages all over the content.</summary>
    public ImmutableArray<string> Messages(int count) =>
        [.. Enumerable.Range(0, count)
            .Select(place => $"the {All[(int)((long)place * All.Length / count)].Phrases[0]} and {Said(2)}")];

    private SearchEntry Page(int number) => new(
        NodeKind.Fault, string.Create(CultureInfo.InvariantCulture, $"page-{number:000000}"), Said(3),
        [.. Enumerable.Range(0, Wordings).Select(_ => Said(WordsOfWording))], Said(WordsOfBody));

    private string Said(int count) => string.Join(' ', Enumerable.Range(0, count).Select(_ => Word()));

    private string Word()
    {
        // The place of a word whose logarithm is spread evenly.
        var place = (int)Math.Pow(words, Next());
        return Starts[place % 16] + Ends[place / 16 % 16]
            + (place < 256 ? "" : Starts[place / 256 % 16] + Ends[place / 4096 % 16]);
    }

    /// <summary>0 to 1, 1 left out. Source: the multiplier of Numerical Recipes, 2nd edition, 7.1.</summary>
    private double Next()
    {
        state = (state * 1_664_525) + 1_013_904_223;
        return state / 4_294_967_296.0;
    }
}
