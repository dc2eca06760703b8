using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings;

/// <summary>What was asked just before a message came in; it decides what a bare number can mean.</summary>
public sealed record ReadingContext
{
    /// <summary>Nothing was asked and nothing is known.</summary>
    public static ReadingContext None { get; } = new();

    /// <summary>The quantity asked; null if none was.</summary>
    public QuantityKind? Asked { get; init; }

    /// <summary>The unit that stands beside the field to fill in; null if none does.</summary>
    public Unit? DefaultUnit { get; init; }

    /// <summary>What the measurement can give; null if not known.</summary>
    public PossibleRange? Possible { get; init; }

    /// <summary>The lines of the form in order, such as <c>U–V</c>; empty if one value was asked.</summary>
    public ImmutableArray<string> Labels { get; init; } = [];

    /// <summary>Where the technician works; null if not known.</summary>
    public Market? Market { get; init; }

    /// <summary>A context in which one quantity was asked and nothing else is known.</summary>
    public static ReadingContext For(QuantityKind asked, Market? market = null) =>
        new() { Asked = asked, Market = market };
}
