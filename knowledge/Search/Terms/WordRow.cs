using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>Words side by side with blanks between, so that any run of them can be looked up as it stands.</summary>
internal readonly struct WordRow
{
    private readonly ImmutableArray<string> words;
    private readonly string row;
    private readonly int[] starts;

    public WordRow(ImmutableArray<string> words)
    {
        (this.words, row, starts) = (words, string.Join(' ', words.AsSpan()), new int[words.Length + 1]);
        for (var at = 0; at < words.Length; at++)
            starts[at + 1] = starts[at] + words[at].Length + 1;
    }

    public int Length => words.Length;

    public string this[int at] => words[at];

    /// <summary>So many words from a place on.</summary>
    public ReadOnlySpan<char> Run(int at, int length) => row.AsSpan(starts[at], starts[at + length] - starts[at] - 1);
}
