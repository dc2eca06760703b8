using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Asks back when a number without a unit would be a voltage that no supply of this unit can have.</summary>
/// <remarks>
/// 450 typed at a 230 V unit is a slip, a reading of something else, or a danger: none of it is taken unasked.
/// </remarks>
internal static class BareVoltage
{
    // So many times the nominal voltage; beyond it a slip is likelier than such a supply. Common practice, no source.
    private const double Plausible = 1.5;

    /// <param name="nominal">What the series is made for, V; null where the check does not compare with it.</param>
    public static ReadingResult Settle(double? nominal, ReadingResult result) =>
        nominal is { } volts && result is ReadingResult.Readings { List: var list }
            && list.Any(reading => IsDoubtful(reading, volts))
            ? new ReadingResult.AskBack(ReadingReason.Unsure, [new Meaning(list)]) : result;

    /// <summary>The nominal voltage that a check compares with, V.</summary>
    public static double? NominalOf(TurnDraft turn, CheckPage page) =>
        turn.View.Series is { } series && page.Expected.ContainsKey("nominal")
        && turn.Library.JudgeInputsFor(page, series)
            .GetValueOrDefault("nominal") is JudgeInput.Number { Value: var value }
            && value.Unit.Kind == QuantityKind.Voltage
            ? value.Unit.ToSi(value.Value) : null;

    private static bool IsDoubtful(Reading reading, double nominal) =>
        reading is { State: ReadingState.Number, Unit.Kind: QuantityKind.Voltage }
            && reading.Value > Plausible * nominal && !reading.Said.Any(char.IsLetter);
}
