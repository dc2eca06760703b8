using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Conversation.Deciding;

/// <summary>What somebody with another role will begin with, and the instruments for it.</summary>
internal sealed class ThingsToBring(StepChooser chooser)
{
    private const int ChecksNamed = 3;

    // What is read in megohms takes a tester with a test voltage of its own; common practice, no source.
    private const double InsulationOhms = 1e6;

    public void Say(TurnDraft turn, RolePage needed)
    {
        CaseState asThem = turn.State with { Role = needed.Role.Id, AccessRefused = Sorted.Set, RepairsPassedOver = Sorted.Set };
        if (chooser.Plan(new CaseView(turn.Library, asThem)) is not { } plan) return;
        ImmutableArray<CheckPage> checks =
        [
            .. plan.Options.Select(option => option.Step).OfType<PlannedStep.DoCheck>()
                .Select(check => turn.Library.Checks[check.Check])
                .Where(page => !turn.View.Role.May(turn.Library.Graph.Find(page.Id)!.Who)).Take(ChecksNamed),
        ];
        if (checks.IsEmpty) return;
        turn.Say(SegmentKind.Advice, "closed-begin-with", Slot.List("checks", [.. checks.Select(page => page.Title)]));
        ImmutableArray<string> tools = [.. checks.SelectMany(page => page.Readings).Select(Tool).Distinct().Order(StringComparer.Ordinal)];
        if (!tools.IsEmpty) turn.Say(SegmentKind.Advice, "closed-tools", Together(turn, tools));
    }

    private static string Tool(ReadingField field) => field.Unit.Kind switch
    {
        QuantityKind.GaugePressure or QuantityKind.AbsolutePressure or QuantityKind.Pressure => "tool-gauges",
        QuantityKind.Temperature or QuantityKind.TemperatureDifference => "tool-thermometer",
        QuantityKind.Current => "tool-clamp",
        QuantityKind.Resistance when field.Unit.ToSi(1) >= InsulationOhms => "tool-insulation",
        _ => "tool-meter",
    };

    private static Slot Together(TurnDraft turn, ImmutableArray<string> tools) => new(
        "tools", string.Join(", ", tools.Select(tool => turn.Speaker.Text(tool))),
        [.. tools.Select(tool => (Provenance)new Provenance.Phrase(tool))]);
}
