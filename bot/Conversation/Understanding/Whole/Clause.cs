using System.Collections.Immutable;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>A piece of a message and the wordings found in it.</summary>
/// <param name="Words">What it says, marks of doubt and of coming and going taken out.</param>
internal sealed record Clause(string Text, ImmutableArray<string> Words, ImmutableArray<Tile> Tiles, bool Doubtful,
    bool ComesAndGoes)
{
    public static Clause Read(string text, WordLists lists, Wordings wordings)
    {
        ImmutableArray<string> read = lists.Read(text);
        ImmutableArray<string> words = [.. read.Where(word => word is not (WordLists.Doubt or WordLists.Sometimes))];
        return new Clause(text, words, Cover(words, wordings), read.Contains(WordLists.Doubt),
            read.Contains(WordLists.Sometimes));
    }

    /// <summary>Whether nothing but wordings stands beside this one: then it says what it seems to say.</summary>
    public bool IsBounded(Tile tile) =>
        (tile.At == 0 || Tiles.Any(other => other.End == tile.At))
        && (tile.End == Words.Length || Tiles.Any(other => other.At == tile.End));

    /// <summary>Whether every word is part of a wording.</summary>
    public bool IsCovered => Tiles.Sum(tile => tile.Length) == Words.Length;

    /// <summary>Whether a part was changed whose name no wording of a repair holds.</summary>
    /// <param name="afterReplaced">Whether the piece before told of a part: "swapped the motor and the board".</param>
    public bool TellsOfAPart(bool afterReplaced) => Words.Contains(WordLists.Replaced)
        ? !Tiles.Any(tile => tile.Means.Any(thing => thing is ToldThing.Tried))
        : afterReplaced && Tiles.IsEmpty;

    // From the left, the longest wording first.
    private static ImmutableArray<Tile> Cover(ImmutableArray<string> words, Wordings wordings)
    {
        var tiles = ImmutableArray.CreateBuilder<Tile>();
        for (int at = 0; at < words.Length;)
        {
            int length = Math.Min(wordings.Longest, words.Length - at);
            while (length > 0 && wordings.Find(words.AsSpan(at, length)).IsEmpty) length--;
            if (length == 0)
            {
                at++;
                continue;
            }

            tiles.Add(new Tile(at, length, wordings.Find(words.AsSpan(at, length))));
            at += length;
        }

        return tiles.ToImmutable();
    }
}
