using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>A calculation that a page or a program can ask for by name.</summary>
public sealed class Calculation
{
    internal Calculation(
        string name, string title, string formula, Citation source,
        ImmutableArray<CalculationInput> inputs, ImmutableArray<CalculationOutput> outputs, Func<Given,
            CalculationResult> body) =>
        (Name, Title, Formula, Source, Inputs, Outputs, Body) = (name, title, formula, source, inputs, outputs, body);

    /// <summary>Kebab-case, unique.</summary>
    public string Name { get; }

    public string Title { get; }

    /// <summary>In plain text, with the names of inputs and outputs as symbols.</summary>
    public string Formula { get; }

    /// <summary>Where the formula or table comes from.</summary>
    public Citation Source { get; }

    public ImmutableArray<CalculationInput> Inputs { get; }

    public ImmutableArray<CalculationOutput> Outputs { get; }

    private Func<Given, CalculationResult> Body { get; }

    /// <summary>Runs it on what a user gave. Never throws for a user's values and never answers with a number that is
    /// none.</summary>
    public CalculationResult Run(ImmutableSortedDictionary<string, CalculationValue> inputs)
    {
        var known = ImmutableSortedDictionary.CreateBuilder<string, CalculationValue>(StringComparer.Ordinal);
        foreach (var input in Inputs)
        {
            if (!inputs.TryGetValue(input.Name, out var value))
            {
                if (input.Required)
                    return Given.Invalid($"{input.Name} is missing");
                continue;
            }
            if (InputCheck.Refuse(input, value, out var checkedValue) is { } refusal)
                return refusal;
            known[input.Name] = checkedValue;
        }
        return OfOneKind(known) ?? Body(new Given(this, known.ToImmutable()));
    }

    // Numbers of any kind go together only when they share one unit.
    private CalculationResult? OfOneKind(ImmutableSortedDictionary<string, CalculationValue>.Builder known)
    {
        var units = Inputs.Where(input => input is { Form: CalculationInputForm.Number, Unit: null }
            && known.ContainsKey(input.Name))
            .Select(input => ((CalculationValue.Number)known[input.Name]).Quantity.Unit.Code)
                .Distinct(StringComparer.Ordinal).ToArray();
        return units.Length > 1 ? Given.Invalid(
            $"units differ: {string.Join(", ", units.Select(unit => unit.Length == 0 ? "none" : unit))}") : null;
    }
}
