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
    // What is read in megohms takes a tester with a test voltage of its own; common practice, no source.
    private const double InsulationOhms = 1e6;

    public void Say(TurnDraft turn, RolePage needed)
    {
        CaseState asThem =
            turn.State with { Role = needed.Role.Id, AccessRefused = Sorted.Set, RepairsPassedOver = Sorted.Set };
        CaseView view = new(turn.Library, asThem);
        if (chooser.Walk(view) is not { } walk) return;
        ImmutableArray<FaultId> suspects = SuspectsOf(view, turn.Library.Settings);
        ImmutableArray<CheckPage> checks =
        [
            .. walk.Plan.Options.Select(option => option.Step).Prepend(walk.Step).OfType<PlannedStep.DoCheck>()
                .Where(check => check == walk.Step || TellsApart(turn.Library.Graph.Find(check.Check)!, suspects))
                .Select(check => turn.Library.Checks[check.Check]).DistinctBy(page => page.Id)
                .Where(page => !turn.View.Role.May(turn.Library.Graph.Find(page.Id)!.Who))
                .Take(turn.Library.Settings.BeginWith),
        ];
        if (checks.IsEmpty) return;
        turn.Say(SegmentKind.Advice, "closed-begin-with", Slot.List("checks", [.. checks.Select(page => page.Title)]));
        ImmutableArray<string> tools =
            [.. checks.SelectMany(page => page.Readings).Select(Tool).Distinct().Order(StringComparer.Ordinal)];
        if (!tools.IsEmpty) turn.Say(SegmentKind.Advice, "closed-tools", Together(turn, tools));
    }

    // Those that are named, and that it is none of them.
    private static ImmutableArray<FaultId> SuspectsOf(CaseView view, WalkSettings settings) =>
    [
        .. view.Belief.Ranked.Where(ranked => ranked.Id != FaultId.NoneOfThese
            && ranked.Probability >= settings.Suspected)
            .Take(settings.Suspects).Select(ranked => ranked.Id),
        FaultId.NoneOfThese,
    ];

    // What shows the same most often under all of them is no reason to bring a tool.
    private static bool TellsApart(Check check, ImmutableArray<FaultId> suspects) =>
        suspects.Select(fault => check.Row(fault)).Select(row => row.IndexOf(row.Max())).Distinct().Count() > 1;

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
