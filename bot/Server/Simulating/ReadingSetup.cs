using System.Collections.Immutable;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating;

/// <summary>What the readings of a check are made from: the page's inputs, the weather, the draws.</summary>
/// <param name="Inputs">As the series of the unit gives them.</param>
/// <param name="Surroundings">How warm it is where the unit stands.</param>
internal sealed record ReadingSetup(
    CheckPage Check,
    ImmutableSortedDictionary<string, JudgeInput> Inputs,
    Surroundings Surroundings,
    Draws Draws)
{
    /// <summary>
    /// The part of a band in which the draws stay, so that a good unit is not drawn at its very limit.
    /// </summary>
    private const double Middle = 0.8;

    public SensorCurve Curve => ((JudgeInput.Curve)Inputs["curve"]).Value;

    public string Word(string name) => ((JudgeInput.Word)Inputs[name]).Value;

    /// <summary>An input in the SI base of its kind; null when the page does not give it.</summary>
    public double? Si(string name) =>
        Inputs.TryGetValue(name, out JudgeInput? input) && input is JudgeInput.Number number ? number.Value.Si : null;

    /// <summary>An input that the page has to give, in the SI base of its kind.</summary>
    public double Given(string name) =>
        Si(name) ?? throw new ArgumentException($"{Check.Id} gives no {name}", nameof(name));

    public double Between(double low, double high) => low + (high - low) * Draws.NextShare();

    public bool Coin() => Draws.NextShare() < 0.5;

    /// <summary>A value well inside a band.</summary>
    public double Inside(double low, double high)
    {
        double margin = (1 - Middle) / 2 * (high - low);
        return Between(low + margin, high - margin);
    }

    /// <summary>A value clearly below a limit, by a share of the width of its band.</summary>
    public double Below(double limit, double width) => limit - Between(0.4, 1.2) * width;

    /// <summary>A value clearly above a limit, by a share of the width of its band.</summary>
    public double Above(double limit, double width) => limit + Between(0.4, 1.2) * width;
}
