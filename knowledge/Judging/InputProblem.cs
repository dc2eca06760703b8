using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>What can be wrong with the inputs of a judge.</summary>
internal static class InputProblem
{
    /// <summary>Lower case, no full stop; null when the input is as needed.</summary>
    public static string? Of(InputNeed need, JudgeInput? input) => (need.Form, input) switch
    {
        (_, null) => need.Required ? $"{need.Name} is missing" : null,
        (InputForm.Curve, JudgeInput.Curve) or (InputForm.Meter, JudgeInput.Meter) => null,
        (InputForm.Refrigerant, JudgeInput.Word word) => Refrigerant.FindCurved(word.Value) is null
            ? $"no saturation curve is held for {word.Value}" : null,
        (InputForm.Number, JudgeInput.Number number) when need.Kind is not { } kind
            || Kinds.Fit(kind, number.Value.Kind) => null,
        (InputForm.Number, JudgeInput.Number number) =>
            $"{need.Name} is {number.Value}, which does not measure a {Words(need.Kind!.Value)}",
        _ => $"{need.Name} must be a {need.Form.ToString().ToLowerInvariant()}",
    };

    /// <summary>A low limit above its high limit.</summary>
    public static string? Turned(ImmutableSortedDictionary<string, JudgeInput> inputs)
    {
        foreach (var (low, high) in new[] { ("low", "high"), ("closed", "open") })
            if (inputs.GetValueOrDefault(low) is JudgeInput.Number one
                && inputs.GetValueOrDefault(high) is JudgeInput.Number two
                && one.Value.Kind == two.Value.Kind && one.Value.Si > two.Value.Si)
                return $"{low} ({one.Value}) is above {high} ({two.Value})";
        return null;
    }

    /// <summary>A meter whose last digit is of a quantity that none of the readings has.</summary>
    public static string? OfMeter(IJudge judge, ImmutableSortedDictionary<string, JudgeInput> inputs) =>
        inputs.GetValueOrDefault("meter") is JudgeInput.Meter { Value: { Counts: > 0,
            Resolution: { Value: > 0 } step } meter }
        && judge.Readings.All(need => need.Kind is { } kind && !Kinds.Same(kind, step.Kind))
            ? $"meter is {meter}, which fits none of the readings"
            : inputs.GetValueOrDefault("meter") is JudgeInput.Meter { Value: var whole } && judge.Readings.All(
                need => need.Kind is { } kind && !whole.Reads(kind))
            ? "the meter reads none of the quantities"
            : null;

    private static string Words(QuantityKind kind) =>
        string.Concat(kind.ToString().Select((letter, i) =>
            i > 0 && char.IsUpper(letter) ? " " + char.ToLowerInvariant(letter) : char.ToLowerInvariant(letter)
                .ToString()));
}
