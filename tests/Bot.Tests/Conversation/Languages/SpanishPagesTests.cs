using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Bot.Tests.Conversation.Languages;

/// <summary>Every page that a walk of the ten symptoms can come to on the wall unit has Spanish text.</summary>
public sealed class SpanishPagesTests
{
    private const string Series = "brenholt-ws";
    private static readonly Library Spanish = ShippedContent.Library.Translations["es"];

    public static TheoryData<string> Symptoms =>
    [
        "poor-cooling", "poor-heating", "water-dripping-indoor", "indoor-fan-not-turning", "communication-code",
        "room-sensor-code", "unit-dead", "icing-indoor-coil", "remote-no-response", "trips-breaker",
    ];

    [Theory]
    [MemberData(nameof(Symptoms))]
    public void Pages_OfASymptom_AreSaid(string symptom)
    {
        FaultId[] faults = [.. ShippedContent.Library.Graph.Find(new SymptomId(symptom))!.Causes.Keys.Where(Applies)];
        string[] untold =
        [
            .. faults.Where(fault => Spanish.Faults[fault].Proof.Place.Language is null).Select(fault => fault.Value),
            .. Spanish.Repairs.Keys.Where(id =>
                ShippedContent.Library.Graph.Find(id)!.Fixes.Any(fault => faults.Contains(fault))
                    && Spanish.Repairs[id].Verify.Place.Language is null).Select(id => id.Value),
            .. Spanish.Checks.Values.Where(page => Tells(page.Id, faults) && page.Ask.Place.Language is null)
                .Select(page => page.Id.Value),
        ];
        Assert.Empty(untold);
    }

    private static bool Tells(CheckId id, FaultId[] faults)
    {
        Check check = ShippedContent.Library.Graph.Find(id)!;
        var series = Spanish.Checks[id].Series;
        return (series.IsEmpty || series.Contains(Series)) && check.Who.Rank <= 1
            && faults.Any(fault => !check.Row(fault).SequenceEqual(check.EveryOtherFault));
    }

    private static bool Applies(FaultId fault) =>
        ShippedContent.Library.Faults[fault].Series is var series && (series.IsEmpty || series.Contains(Series));
}
