using System.Globalization;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Units with a hidden fault, drawn as often as it causes the symptom, walked to the end.</summary>
public sealed class SimulationTests(ITestOutputHelper output)
{
    private const int Seed = 20261125;
    private const int WalksPerSymptom = 4;

    // Under what was reached when the pages were last tuned; raised as they get better.
    private const double CuredFloor = 0.95;

    // Parts changed for nothing, a walk.
    private const double WrongPartCeiling = 0.05;

    [Fact]
    public void HiddenFaults_DrawnFromThePages_AreCured()
    {
        var random = new Random(Seed);
        int walks = 0, cured = 0, wrongParts = 0;
        foreach (Symptom symptom in ShippedContent.Library.Graph.Symptoms)
            for (int walk = 0; walk < WalksPerSymptom; walk++)
            {
                FaultId fault = Draw(symptom, random);
                WalkRecord record = HiddenFault.Drawn(fault, random)
                    .Walk(new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", symptom.Id.Value));
                Assert.NotNull(record.End.ClosedHow);
                walks++;
                wrongParts += record.End.Repairs.Count(repair => !repair.Works && TakesAPart(repair));
                if (IsCured(fault, record)) cured++;
                else output.WriteLine($"{symptom.Id} {fault}: {string.Join(" → ", record.Steps)}, {record.End.ClosedHow}");
            }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed {Seed}: {cured} of {walks} cured, {wrongParts} parts changed for nothing"));
        Assert.True(cured >= CuredFloor * walks, $"{cured} of {walks} cured");
        Assert.True(wrongParts <= WrongPartCeiling * walks, $"{wrongParts} wrong parts in {walks} walks");
    }

    private static bool TakesAPart(TriedRepair repair) =>
        !ShippedContent.Library.Repairs[new RepairId(repair.Repair)].Parts.IsEmpty;

    private static bool IsCured(FaultId fault, WalkRecord record) =>
        fault == FaultId.NoneOfThese ? record.End.ClosedHow == "watch" : record.End.Repairs is [.., { Works: true }];

    private static FaultId Draw(Symptom symptom, Random random)
    {
        (FaultId Fault, double Weight)[] causes = [.. symptom.Causes
            .Where(cause => Applies(ShippedContent.Library.Faults[cause.Key].Series))
            .Select(cause => (cause.Key, cause.Value * ShippedContent.Library.Graph.Find(cause.Key)!.Weight))];
        double at = random.NextDouble() * causes.Sum(cause => cause.Weight);
        foreach ((FaultId fault, double weight) in causes)
            if ((at -= weight) <= 0) return fault;
        return causes[^1].Fault;
    }

    private static bool Applies(System.Collections.Immutable.ImmutableSortedSet<string> series) =>
        series.IsEmpty || series.Contains("brenholt-ws");
}
