using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;

namespace DxAssistant.Knowledge.Readings;

/// <summary>What was asked just before a message came in; it decides what a bare number can mean.</summary>
public sealed record ReadingContext
{
    /// <summary>Nothing was asked and nothing is known.</summary>
    public static ReadingContext None { get; } = new();

    /// <summary>The quantity asked, or the first of several; null if none was.</summary>
    public QuantityKind? Asked { get; init; }

    /// <summary>The unit that stands beside the field to fill in; null if none does.</summary>
    public Unit? DefaultUnit { get; init; }

    /// <summary>What the measurement can give; null if not known.</summary>
    public PossibleRange? Possible { get; init; }

    /// <summary>The lines of the form in order, such as <c>U–V</c>; empty if one value was asked.</summary>
    public ImmutableArray<string> Labels { get; init; } = [];

    /// <summary>The lines with their units, where they are known; empty otherwise.</summary>
    public ImmutableArray<AskedField> Fields { get; init; } = [];

    /// <summary>Where the technician works; null if not known.</summary>
    public Market? Market { get; init; }

    /// <summary>The lines are of several kinds, such as a resistance and the temperature it was read at.</summary>
    internal bool IsMixed => Fields.Any(line => line.Unit.Kind != Fields[0].Unit.Kind);

    /// <summary>A context in which one quantity was asked and nothing else is known.</summary>
    public static ReadingContext For(QuantityKind asked, Market? market = null) =>
        new() { Asked = asked, Market = market };

    /// <summary>The context of a form. Bare numbers are taken in the units of the market, see <see
    /// cref="MarketUnits"/>.</summary>
    /// <param name="fields">At least one.</param>
    /// <exception cref="ArgumentException"><paramref name="fields"/> is empty.</exception>
    public static ReadingContext ForForm(IEnumerable<AskedField> fields, Market? market = null)
    {
        ImmutableArray<AskedField> lines = [.. fields.Select(field =>
            field with { Unit = MarketUnits.Of(field.Unit, market) })];
        if (lines.IsEmpty)
        {
            throw new ArgumentException("a form has at least one line", nameof(fields));
        }
        return new ReadingContext
        {
            Asked = lines[0].Unit.Kind,
            DefaultUnit = lines.All(line => line.Unit == lines[0].Unit) ? lines[0].Unit : null,
            Possible = lines.All(line => line.Unit.Kind == lines[0].Unit.Kind) ? Union(lines) : null,
            Labels = lines.Length > 1 ? [.. lines.Select(line => line.Label)] : [],
            Fields = lines,
            Market = market,
        };
    }

    /// <summary>The quantity is one of those asked.</summary>
    internal bool Asks(QuantityKind kind) => Asked == kind || Fields.Any(field => field.Unit.Kind == kind);

    /// <summary>The quantity, or another of the same family, is one of those asked.</summary>
    internal bool AsksLike(QuantityKind kind) => (Asked is { } asked && Outcomes.Judged.AreAlike(asked, kind))
        || Fields.Any(field => Outcomes.Judged.AreAlike(field.Unit.Kind, kind));

    /// <summary>The context of the line that a label names; this one if it names none.</summary>
    internal ReadingContext Of(LabelMention? label) =>
        label is not null && Fields.FirstOrDefault(field => field.Label == label.Text) is { } field
            ? this with { Asked = field.Unit.Kind, DefaultUnit = field.Unit, Possible = field.Possible,
                Fields = [field] }
            : this;

    private static PossibleRange? Union(ImmutableArray<AskedField> lines) =>
        lines.Any(line => line.Possible is null) ? null
            : new(lines.Min(line => line.Possible!.Least), lines.Max(line => line.Possible!.Most));
}
