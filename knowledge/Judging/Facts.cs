using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Readings and inputs of one request, checked against what the judge needs.</summary>
internal sealed class Facts(IJudge judge, JudgeRequest request)
{
    public int Count => request.Readings.Length;

    /// <summary>A reading in the SI base of its kind.</summary>
    public double this[int index] => request.Readings[index].Value;

    public Reading Reading(int index) => request.Readings[index];

    public bool IsOpen(int index) => Reading(index).State == ReadingState.OpenCircuit;

    public bool IsShort(int index) => Reading(index).State == ReadingState.ShortCircuit;

    public bool IsNumber(int index) => Reading(index).State == ReadingState.Number;

    public string Label(int index) => Reading(index).Label ?? judge.Readings[index].Name;

    public IEnumerable<int> Indices => Enumerable.Range(0, Count);

    public bool Has(string name) => request.Inputs.ContainsKey(name);

    /// <summary>A number in the SI base of its kind; a temperature unit given for a difference is taken as
    /// one.</summary>
    public double Si(string name)
    {
        var quantity = ((JudgeInput.Number)request.Inputs[name]).Value;
        var wanted = judge.Inputs.First(need => need.Name == name).Kind;
        return wanted == QuantityKind.TemperatureDifference
            && Unit.TryParse(quantity.Unit.Symbol, wanted.Value, out var unit)
            ? unit.ToSi(quantity.Value)
            : quantity.Si;
    }

    public double Or(string name, double other) => Has(name) ? Si(name) : other;

    /// <summary>Standard uncertainty from an input that is a limit of error; 0 when it is not given.</summary>
    public double OfLimit(string name) => Uncertainty.OfLimit(Math.Abs(Or(name, 0)));

    public Quantity Number(string name) => ((JudgeInput.Number)request.Inputs[name]).Value;

    public SensorCurve Curve => ((JudgeInput.Curve)request.Inputs["curve"]).Value;

    public MeterClass Meter => ((JudgeInput.Meter)request.Inputs["meter"]).Value;

    public string Word(string name) => ((JudgeInput.Word)request.Inputs[name]).Value;

    /// <summary>Standard uncertainty of a reading by the meter.</summary>
    public double OfMeter(int index) => MeterAt(index).StandardUncertainty(this[index]);

    /// <summary>What the meter promises at a reading.</summary>
    public MeterClass MeterAt(int index) => Meter.At(Reading(index).Unit.Kind, this[index]);
}
