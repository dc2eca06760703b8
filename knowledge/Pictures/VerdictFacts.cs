using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>What a picture of a verdict is drawn from.</summary>
/// <param name="Judge">The calculation of the check.</param>
/// <param name="What">The check's title.</param>
public sealed record VerdictFacts(string Judge, string What, JudgeRequest Request, Judgement Judgement)
{
    internal ImmutableArray<Reading> Readings => Request.Readings;

    internal ImmutableArray<ExpectedBand> Expected => Judgement.Expected;

    internal string Label(int index) => Readings[index].Label ?? JudgeCatalogue.All[Judge].Readings[index].Name;

    /// <summary>A reading with its label, such as <c>U–V 1.1 Ω</c>.</summary>
    internal string Labelled(int index) => $"{Label(index)} {Figures.Of(Readings[index])}";

    internal string AllLabelled => string.Join(", ", Enumerable.Range(0, Readings.Length).Select(Labelled));

    internal Quantity? Number(string name) => Request.Inputs.GetValueOrDefault(name) is JudgeInput.Number number
        ? number.Value
        : null;
}
