using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>Checks one input against what a calculation wants, and puts it into the kind wanted.</summary>
internal static class InputCheck
{
    /// <summary>A refusal, or null and the value in its form and kind.</summary>
    public static CalculationResult? Refuse(CalculationInput input, CalculationValue value, out CalculationValue known)
    {
        known = value;
        return (input.Form, value) switch
        {
            (CalculationInputForm.Number, CalculationValue.Number number) =>
                Number(input, number.Quantity.Value, number.Quantity.Unit.Code, number.Quantity.Unit, out known),
            (CalculationInputForm.Number, CalculationValue.Unknown number) =>
                Number(input, number.Value, number.Unit, null, out known),
            (CalculationInputForm.Numbers, CalculationValue.Unknown list) => WrongUnit(input, list.Unit),
            (CalculationInputForm.Word, CalculationValue.Text word) => Word(input, word.Value, out known),
            (CalculationInputForm.Word, CalculationValue.Number number) =>
                Word(input, NumberText.Of(number.Quantity.Value), out known),
            (CalculationInputForm.Words, CalculationValue.Texts words) when words.Values.Length > 0 => null,
            (CalculationInputForm.Numbers, CalculationValue.Numbers list) when list.Values.Length > 0 =>
                Numbers(input, list, out known),
            _ => Given.Invalid($"{input.Name} must be {Wanted(input)}"),
        };
    }

    private static CalculationResult? Number(
        CalculationInput input, double value, string code, Unit? unit, out CalculationValue known)
    {
        known = new CalculationValue.Unknown(value, code);
        if (!double.IsFinite(value))
            return Given.Invalid($"{input.Name} is not a number");
        if (input.Unit is { } wanted && !Unit.TryParse(code, wanted.Kind, out unit) || unit is null)
            return WrongUnit(input, code);
        known = new CalculationValue.Number(new Quantity(value, unit));
        return Outside(input, value, unit);
    }

    private static CalculationResult? Outside(CalculationInput input, double value, Unit unit)
    {
        // Rounded, so that 77 °F is not taken for a hair more than 25 °C.
        var inUnit = input.Unit is { } own && own != unit ? NumberText.Round(own.FromSi(unit.ToSi(value)), 12) : value;
        var symbol = input.Unit?.Symbol ?? unit.Symbol;
        if (!double.IsFinite(unit.ToSi(value)))
            return Given.OutOfRange($"{input.Name} is too large");
        if (!input.Possible.Holds(inUnit))
            return Given.Invalid($"{input.Name} must be {input.Possible} {symbol}".TrimEnd());
        return input.Covered.Holds(inUnit) ? null : Given.OutOfRange(
            $"{input.Name} is covered for {input.Covered} {symbol}".TrimEnd());
    }

    private static CalculationResult? Numbers(CalculationInput input, CalculationValue.Numbers list,
        out CalculationValue known)
    {
        known = list;
        if (!Unit.TryParse(list.Unit.Code, input.Unit!.Kind, out var unit))
            return WrongUnit(input, list.Unit.Code);
        known = list with { Unit = unit };
        return list.Values.Select(value => double.IsFinite(value) ? Outside(input, value, unit)
            : Given.Invalid($"{input.Name} holds what is not a number"))
            .FirstOrDefault(refusal => refusal is not null);
    }

    private static CalculationResult? Word(CalculationInput input, string word, out CalculationValue known)
    {
        var match = input.Choices.FirstOrDefault(choice =>
            string.Equals(choice, word.Trim(), StringComparison.OrdinalIgnoreCase));
        known = new CalculationValue.Text(match ?? word.Trim());
        return input.Choices.Length > 0 && match is null || word.Trim().Length == 0
            ? Given.Invalid($"{input.Name} must be {Wanted(input)}")
            : null;
    }

    private static string Wanted(CalculationInput input) => input.Form switch
    {
        CalculationInputForm.Number => input.Unit is null ? "a number" : $"a number in {Name(input.Unit)}",
        CalculationInputForm.Numbers => $"a list of numbers in {Name(input.Unit!)}",
        CalculationInputForm.Words => "a list of words",
        _ => input.Choices.Length == 0 ? "a word" : string.Join(" or ", input.Choices),
    };

    private static CalculationResult WrongUnit(CalculationInput input, string code)
    {
        var given = code.Length == 0 ? "a plain number" : code;
        var accepted = input.Unit is null ? "" : $"; accepted: {string.Join(", ", Accepted(input.Unit))}";
        return Given.Invalid($"{input.Name} must be {Wanted(input)}, not in {given}{accepted}");
    }

    // As programs write them, with the sign people know where it differs.
    private static IEnumerable<string> Accepted(Unit wanted) => Unit.All.Where(unit => unit.Kind == wanted.Kind)
        .Select(unit => unit.Code.Length == 0 ? "1" : unit.Code == unit.Symbol
            ? unit.Code
            : $"{unit.Code} ({unit.Symbol})")
        .Distinct(StringComparer.Ordinal);

    private static string Name(Unit unit) => unit.Symbol.Length == 0 ? "plain form" : unit.Symbol;
}
