using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What a technician reads before a repair is what matters.</summary>
public sealed class RepairCautionsTests
{
    [Fact]
    public void Repair_AtTheDeadUnit_NamesWhatWasToldOnTheWayAndSaysTheRestDeadlyFirst()
    {
        Walker walker = AtRepair("brenholt-ws", "trips-breaker", "compressor-grounded");
        string[] lines = [.. walker.Reply.Segments.Where(segment => segment.Kind == SegmentKind.Caution)
            .Select(segment => segment.Text)];
        Assert.Equal("Still in force: Live mains, Stored charge, Working at height.", lines[0]);
        Assert.DoesNotContain(lines, line => line.Contains("stop the heart", StringComparison.Ordinal));
        int flame = Array.FindIndex(lines, line => line.Contains("gives off acid fumes", StringComparison.Ordinal));
        int weight = Array.FindIndex(lines, line => line.Contains("strains a back", StringComparison.Ordinal));
        Assert.InRange(flame, 1, weight - 1);
    }

    // Where the job begins nobody was brought to the unit step by step, so nothing was told.
    [Fact]
    public void Repair_WhereTheJobBegins_SaysItsCautionsInFull()
    {
        Walker walker = AtRepair("brenholt-ws", "remote-no-response", "remote-control-faulty", "owner");
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution);
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.StartsWith("Still in force", StringComparison.Ordinal));
    }

    // Eight lines before most jobs, ten before the longest: more is not read on a roof.
    [Fact]
    public void Repair_OfTheShippedPages_HasFewLinesOfCautionAndNoneTwice() => Assert.All(
        ShippedContent.Library.Graph.Repairs, repair =>
        {
            RepairPage page = ShippedContent.Library.Repairs[repair.Id];
            foreach (AccessId state in repair.Access)
            {
                string[] told = [.. ShippedContent.Library.Access[state].Cautions.Select(caution => caution.Id)];
                Passage[] lines = [.. page.Cautions.Where(caution => !told.Contains(caution.Id))
                    .SelectMany(caution => caution.Do.Prepend(caution.Danger))];
                Assert.InRange(lines.Length + 1, 1, 10);
                Assert.Equal(lines.Length, lines.Select(line => line.Text).Distinct().Count());
            }
        });

    private static Walker AtRepair(string series, string symptom, string fault, string role = "refrigerant")
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin(series, role, symptom);
        HiddenFault hidden = HiddenFault.Typical(fault);
        while (walker.Question.Kind != QuestionKind.Repair && walker.State.ClosedHow is null) hidden.Answer(walker);
        Assert.Equal(QuestionKind.Repair, walker.Question.Kind);
        return walker;
    }
}
