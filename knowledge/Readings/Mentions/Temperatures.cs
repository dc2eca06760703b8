using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Decides between °C and °F where only "degrees" or nothing was said.</summary>
internal static class Temperatures
{
    /// <summary>Both scales.</summary>
    public static ImmutableArray<Unit> Scales { get; } = [Table.Celsius, Table.Fahrenheit];

    /// <summary>The scale of the field or the market, if the air can have that temperature; otherwise those it can
    /// have.</summary>
    public static ImmutableArray<Unit> Scale(Mention mention, ReadingContext context)
    {
        Unit? read = context.Market is { } market ? MarketUnits.Of(Table.Celsius, market) : null;
        Unit? usual = context.DefaultUnit is { Kind: QuantityKind.Temperature } shown ? shown : read;
        if (read is not null && usual != read)
        {
            return Scales;
        }
        ImmutableArray<Unit> possible = [.. Scales.Where(unit => IsPossible(mention, unit))];
        return possible.IsEmpty ? Scales
            // Only °F tells itself: 72 cannot be °C in a room, but 10 may be anything.
            : usual is null ? possible is [var only] && only == Table.Fahrenheit ? possible : Scales
            : possible.Contains(usual) ? [usual]
            : Scales;
    }

    // Air that people work in: common practice, no source. Pipes and sensors have no such bounds here.
    private static bool IsPossible(Mention mention, Unit unit)
    {
        if (mention.Label is not { Kind: LabelKind.Air } label)
        {
            return true;
        }
        bool outdoors = label.Text is "outdoor" or "ambient";
        (double least, double most) = outdoors ? (-45.0, 55.0) : (0.0, 50.0);
        double value = unit.ToSi(mention.Sign == Sign.Minus ? -mention.Values[0] : mention.Values[0]);
        return value >= least && value <= most;
    }
}
