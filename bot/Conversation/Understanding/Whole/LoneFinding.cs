using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// One finding as the first words of a case is the complaint: "the fan does not turn". What only gauges show, and figures,
/// are none: nobody calls for it, and it is kept until somebody says what is wrong.
/// </summary>
internal static class LoneFinding
{
    public static bool IsComplaint(TurnDraft turn, WholeMessage told) =>
        told.IsLoneFinding && told.Items is [{ Thing: var thing }] && !IsOfInstruments(turn, thing)
        && turn.State is { Symptoms.IsEmpty: true, Code: null, Unconfirmed.IsEmpty: true };

    /// <summary>Whether a message tells of nothing but what instruments show, and perhaps of unit and person.</summary>
    public static bool TellsNoMore(TurnDraft turn, WholeMessage told) => told.Rest.IsEmpty
        && told.Items.Any(item => IsOfInstruments(turn, item.Thing))
        && told.Items.All(item => IsOfInstruments(turn, item.Thing)
            || item.Thing is ToldThing.Unit or ToldThing.AtUnit or ToldThing.Mode);

    /// <summary>Whether gauges are read for a check.</summary>
    public static bool IsOfGauges(CheckPage page) => page.Readings.Any(field =>
        field.Unit.Kind is QuantityKind.GaugePressure or QuantityKind.AbsolutePressure);

    private static bool IsOfInstruments(TurnDraft turn, ToldThing thing) => thing switch
    {
        ToldThing.Measured => true,
        ToldThing.Outcome outcome => turn.Library.Checks.TryGetValue(new CheckId(outcome.Check), out CheckPage? page)
            && IsOfGauges(page),
        _ => false,
    };
}
