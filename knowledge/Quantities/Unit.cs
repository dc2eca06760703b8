using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace DxAssistant.Knowledge.Quantities;

/// <summary>A unit of measure: how it is written and how it converts to the SI base of its kind.</summary>
/// <remarks>
/// Written by hand, not taken from a library: the trade needs some eighty units, conversions must be exact and the
/// same on every system, and the whole must run in a browser at a few kilobytes.
/// </remarks>
public sealed record Unit
{
    private readonly double _factor;
    private readonly double _offset;

    internal Unit(string symbol, string code, QuantityKind kind, double factor, double offset,
        params string[] spellings)
    {
        (Symbol, Code, Kind, _factor, _offset) = (symbol, code, kind, factor, offset);
        Spellings = [.. spellings.Append(code).Append(symbol).Select(Normalize).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Every unit, those that a symbol means by default first.</summary>
    public static ImmutableArray<Unit> All => Units.All;

    /// <summary>How people read it: <c>kΩ</c>, <c>°C</c>, <c>psig</c>. Empty for a plain number.</summary>
    public string Symbol { get; }

    /// <summary>The ASCII spelling that programs exchange: <c>kohm</c>, <c>degC</c>, <c>psig</c>.</summary>
    public string Code { get; }

    public QuantityKind Kind { get; }

    /// <summary>Every exact spelling, symbol and code included.</summary>
    public ImmutableArray<string> Spellings { get; }

    /// <summary>Finds a unit by one of its exact spellings; upper and lower case differ (mΩ, MΩ).</summary>
    /// <remarks>A spelling with several meanings gives the first: K a difference, °F a temperature, kPa a pressure
    /// whose zero is not said.</remarks>
    public static bool TryParse(string? symbol, [NotNullWhen(true)] out Unit? unit) =>
        (unit = Named(symbol).FirstOrDefault()) is not null;

    /// <summary>Finds a unit of a kind by one of its exact spellings, so that K can be a temperature and kPa a gauge
    /// pressure.</summary>
    public static bool TryParse(string? symbol, QuantityKind kind, [NotNullWhen(true)] out Unit? unit) =>
        (unit = Named(symbol).FirstOrDefault(u => u.Kind == kind)) is not null;

    /// <summary>Converts a number in this unit to the SI base of its kind.</summary>
    public double ToSi(double value) => (value + _offset) * _factor;

    /// <summary>Converts a number in the SI base of the kind to this unit.</summary>
    public double FromSi(double si) => si / _factor - _offset;

    public override string ToString() => Symbol;

    private static ImmutableArray<Unit> Named(string? symbol) =>
        symbol is not null && Units.BySpelling.TryGetValue(Normalize(symbol), out var found) ? found : [];

    // Unicode has two ohms, two micros and two degree-like signs; people's keyboards pick either.
    private static string Normalize(string symbol) => symbol.Trim()
        .Replace('\u2126', '\u03A9').Replace('\u03BC', '\u00B5').Replace('\u00BA', '\u00B0').Replace('\u00B7', ' ')
        .Replace("²", "2", StringComparison.Ordinal).Replace("³", "3", StringComparison.Ordinal);
}
