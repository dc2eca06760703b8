using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>What a meter's maker promises: a share of the reading plus some counts of the last digit, or a plain limit
/// of error.</summary>
/// <param name="Percent">Of the reading, %; 0 or more.</param>
/// <param name="Counts">Of the last digit; 0 or more. 1 for a plain limit.</param>
/// <param name="Resolution">What one count is worth, or the plain limit; a difference where it is a
/// temperature.</param>
public sealed record MeterClass(double Percent, double Counts, Quantity Resolution)
{
    /// <summary>The ranges of a whole meter, of each kind the smallest first; empty for a promise that holds for any
    /// reading.</summary>
    public ImmutableArray<MeterRange> Ranges { get; init; } = [];

    /// <summary>A meter of several ranges, perhaps of several kinds.</summary>
    /// <param name="ranges">At least one; none has ranges of its own.</param>
    public static MeterClass OfRanges(IEnumerable<MeterRange> ranges) =>
        new(0, 0, new Quantity(0, Units.One)) { Ranges = [.. ranges.OrderBy(range => range.MostSi)] };

    /// <summary>True when it can read that kind at all.</summary>
    public bool Reads(QuantityKind kind) => Ranges.IsEmpty || Ranges.Any(range => range.Most.Unit.Kind == kind);

    /// <summary>What it promises at a reading: that of the smallest range which shows it, as a meter that chooses its
    /// range does; beyond the last range that of the last.</summary>
    /// <param name="reading">In the SI base of the kind.</param>
    /// <exception cref="ArgumentException">It does not read that kind.</exception>
    public MeterClass At(QuantityKind kind, double reading)
    {
        if (Ranges.IsEmpty)
            return this;
        var own = Ranges.Where(range => range.Most.Unit.Kind == kind).ToArray();
        return own.FirstOrDefault(range => Math.Abs(reading) <= range.MostSi)?.Promise ?? own.LastOrDefault()?.Promise
            ?? throw new ArgumentException($"the meter does not read a {kind}", nameof(kind));
    }

    /// <summary>A meter without error, for arithmetic alone.</summary>
    public static MeterClass Perfect(Unit unit) => new(0, 0, new Quantity(0, unit));

    /// <summary>A plain limit of error.</summary>
    public static MeterClass PlusMinus(Quantity limit) => new(0, 1, limit);

    /// <summary>Limit of error at a reading, both in the SI base of the kind.</summary>
    public double LimitOfError(double reading) => Uncertainty.MeterLimit(reading, Percent, Counts, Step);

    /// <summary>Standard uncertainty at a reading, both in the SI base of the kind.</summary>
    /// <remarks>Source: GUM, JCGM 100:2008, 4.3.7: within its limit every error is as likely.</remarks>
    public double StandardUncertainty(double reading) => Uncertainty.OfLimit(LimitOfError(reading));

    /// <summary>Reads <c>1 % + 3 × 0.01 Ω</c>, <c>0.5 %</c>, <c>2 × 1 V</c>, <c>± 0.5 K</c> or <c>± 3 %</c>.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out MeterClass? meter)
    {
        var plain = (text ?? "").Trim().TrimStart('±').Trim();
        var parts = plain.Split('+', 2, StringSplitOptions.TrimEntries);
        meter = parts.Length == 2 ? Joined(Share(parts[0]), Digits(parts[1])) : Share(plain) ?? Digits(plain);
        return meter is not null;
    }

    public override string ToString() => !Ranges.IsEmpty ? string.Join("; ", Ranges.Select(
        range => $"to {range.Most}: {range.Promise}")) : (Percent, Counts) switch
    {
        ( > 0, > 0) => $"{NumberText.Of(Percent)} % + {Last}",
        ( > 0, _) => $"{NumberText.Of(Percent)} %",
        _ => Counts == 1 ? $"± {Resolution}" : Last,
    };

    private string Last => $"{NumberText.Of(Counts)} × {Resolution}";

    private double Step => Resolution.Kind == QuantityKind.Temperature
        ? Resolution.Unit.ToSi(Resolution.Value) - Resolution.Unit.ToSi(0)
        : Resolution.Si;

    private static MeterClass? Joined(MeterClass? share, MeterClass? digits) =>
        share is null || digits is null || digits.Resolution.Kind == QuantityKind.Ratio
            ? null
            : digits with { Percent = share.Percent };

    private static MeterClass? Share(string text) =>
        text.EndsWith('%') && QuantityText.TryNumber(text[..^1], out var percent) && percent >= 0
            ? new MeterClass(percent, 0, new Quantity(0, Units.One))
            : null;

    private static MeterClass? Digits(string text)
    {
        var parts = text.Split(['×', 'x', '*', '·'], 2, StringSplitOptions.TrimEntries);
        var (counts, step) = parts.Length == 2 ? (parts[0], parts[1]) : ("1", text);
        return QuantityText.TryNumber(counts, out var number) && number >= 0
            && QuantityText.TryParse(step, out var resolution) && resolution.Value >= 0
            ? new MeterClass(0, number, resolution)
            : null;
    }
}
