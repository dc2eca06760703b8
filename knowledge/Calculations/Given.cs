using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>The inputs of one run, checked: every required one is there, in its form, of its kind and inside its
/// bounds.</summary>
internal sealed class Given(Calculation calculation, ImmutableSortedDictionary<string, CalculationValue> values)
{
    private ImmutableArray<Derivation> _children = [];

    public bool Has(string name) => values.ContainsKey(name);

    /// <summary>In the SI base of the kind; of any kind, as typed.</summary>
    public double this[string name] => Number(name).Si;

    public double Or(string name, double other) => Has(name) ? this[name] : other;

    public Quantity Number(string name) => ((CalculationValue.Number)values[name]).Quantity;

    public string Word(string name) => ((CalculationValue.Text)values[name]).Value;

    public ImmutableArray<double> Numbers(string name)
    {
        var list = (CalculationValue.Numbers)values[name];
        return [.. list.Values.Select(list.Unit.ToSi)];
    }

    public ImmutableArray<string> Words(string name) => ((CalculationValue.Texts)values[name]).Values;

    public Resistance Resistance(string name) => Quantities.Resistance.FromOhms(this[name]);

    public Temperature Temperature(string name) => Quantities.Temperature.FromCelsius(this[name]);

    public TemperatureDelta Delta(string name) => TemperatureDelta.FromKelvins(this[name]);

    public AbsolutePressure Absolute(string name) => AbsolutePressure.FromPascals(this[name]);

    public GaugePressure Gauge(string name) => GaugePressure.FromPascals(this[name]);

    /// <summary>Hangs the derivation of a part under the answer.</summary>
    public Given From(Derivation child)
    {
        _children = _children.Add(child);
        return this;
    }

    /// <summary>Answers with one value for each output, numbers in the SI base of the output's kind.</summary>
    public CalculationResult Answer(params Found[] found)
    {
        if (found.Any(value => !value.IsFinite))
            return OutOfRange("the result is outside of what can be calculated");
        var terms = calculation.Outputs.Zip(found, (output, value) =>
            new DerivationTerm(output.Name, value.In(UnitOf(output)))).ToImmutableArray();
        var putIn = calculation.Inputs.Where(input => Has(input.Name))
            .Select(input => new DerivationTerm(input.Name, values[input.Name])).ToImmutableArray();
        return new CalculationResult.Answer(
            terms, new Derivation(calculation.Formula, putIn, terms, _children, calculation.Source));
    }

    public static CalculationResult Invalid(string message) => new CalculationResult.InvalidInput(message);

    public static CalculationResult OutOfRange(string message) => new CalculationResult.OutOfRange(message);

    private Unit? UnitOf(CalculationOutput output) =>
        output.UnitFor(output.Follows is { } name && Has(name) ? Number(name).Unit : null);
}
