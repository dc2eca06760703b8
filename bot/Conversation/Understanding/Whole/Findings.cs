using System.Collections.Immutable;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>What is found in a message while it is read.</summary>
internal sealed class Findings
{
    private readonly List<ToldItem> _items = [];
    private readonly List<string> _unclear = [];
    private readonly List<string> _rest = [];
    private readonly HashSet<string> _readings = [];

    /// <summary>Whether the piece that is read is told with doubt.</summary>
    public bool IsDoubted { get; set; }

    /// <summary>Enters readings, as sure as the piece tells them.</summary>
    public void Add(ToldThing.Measured measured, string words) =>
        Add((ToldThing)(measured with { Doubtful = IsDoubted }), words);

    /// <summary>Enters an item; two that say different things about one check are both unclear.</summary>
    public void Add(ToldThing thing, string words)
    {
        var item = new ToldItem(thing, words.Trim(), true);
        if (_items.Find(known => known.IsAbout(item)) is not { } known) _items.Add(item);
        else if (known.Thing != thing && thing is not ToldThing.Symptom)
        {
            _items.Remove(known);
            Unclear(known.Words);
            Unclear(words);
        }
    }

    /// <summary>Enters repairs of which one was made; none counts until somebody says which.</summary>
    public void AddOneOf(ImmutableArray<string> repairs, string words) =>
        _items.AddRange(repairs.Select(repair => new ToldItem(new ToldThing.Tried(repair), words.Trim(), false)));

    /// <summary>Leaves readings that are not all there, or may be of several checks.</summary>
    public void UnclearReadings(string words)
    {
        _readings.Add(words.Trim());
        Unclear(words);
    }

    public void Unclear(string words)
    {
        if (!_unclear.Contains(words.Trim())) _unclear.Add(words.Trim());
    }

    /// <summary>Leaves a piece to the search.</summary>
    public void Leave(string words)
    {
        if (!PlainWords.Telling(words).IsEmpty && !_rest.Contains(words.Trim())) _rest.Add(words.Trim());
    }

    public WholeMessage AsMessage() =>
        new([.. _items], [.. _unclear], [.. _rest.Where(piece => !_unclear.Contains(piece))])
        {
            TellsOnlyReadings = _items.Count == 0 && _readings.Count > 0 && _unclear.TrueForAll(_readings.Contains)
                && _rest.TrueForAll(IsFigure),
        };

    // "30 outside": a figure, and where it was read.
    private static bool IsFigure(string piece) => piece.Any(char.IsDigit)
        && PlainWords.Telling(piece).Count(word => !word.Any(char.IsDigit)) <= 1;
}
