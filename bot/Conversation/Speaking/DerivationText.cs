using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Conversation.Speaking;

/// <summary>
/// How a figure was reached, one line a step: the formula, then the numbers put in, then what came out.
/// </summary>
internal static class DerivationText
{
    public static ImmutableArray<string> Lines(Derivation derivation) => [.. Walk(derivation)];

    // The steps that others build on come first.
    private static IEnumerable<string> Walk(Derivation derivation)
    {
        foreach (Derivation child in derivation.Children)
            foreach (string line in Walk(child)) yield return line;
        yield return derivation.Formula;
        if (!derivation.PutIn.IsEmpty) yield return string.Join(", ", derivation.PutIn.Select(Term));
        if (!derivation.Results.IsEmpty) yield return "→ " + string.Join(", ", derivation.Results.Select(Term));
    }

    private static string Term(DerivationTerm term) => $"{term.Symbol} = {Shown(term.Value)}";

    // Five digits show what was put in without the noise of the arithmetic.
    private static string Shown(CalculationValue value) => value is CalculationValue.Number { Quantity: var quantity }
        ? $"{NumberText.Of(quantity.Value, 5)} {quantity.Unit.Symbol}".TrimEnd()
        : value.ToString()!;
}
