using System.Globalization;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>A conclusion says no more than the belief holds.</summary>
public sealed class ConclusionTests
{
    private static readonly Dictionary<string, string> Answers = new()
    {
        ["high-side-pressure"] = "3600 kPa, 30 C",
        ["how-it-began"] = "right after somebody worked on it",
    };

    [Fact]
    public void Conclusion_TwoFaultsWithOneRepair_EachHasItsOwnShare()
    {
        Walker walker = OverchargeOrAir();
        double likeliest = Assert.Single(walker.Reply.Belief, line => line.Fault == "overcharge").Probability;
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Conclusion
            && segment.Text.Contains(
                FormattableString.Invariant($"Too much refrigerant {Math.Round(100 * likeliest)} %"),
                StringComparison.Ordinal)
            && segment.Text.Contains("Air in the circuit", StringComparison.Ordinal)
            && segment.Text.StartsWith("The repair is sure", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.764, 0.208, false, true, true)]
    [InlineData(0.96, 0.02, true, false, true)]
    [InlineData(0.6, 0.2, false, false, true)]
    [InlineData(0.3, 0.1, false, false, false)]
    public void CuredFaults_TwoShares_AreNeverSummedUnderOneName(double first, double second, bool found,
        bool repairAlone, bool likely)
    {
        var cured = new CuredFaults(
            [new RankedFault(new FaultId("overcharge"), first),
                new RankedFault(new FaultId("non-condensables"), second)], 0.01, WalkSettings.Usual);
        Assert.Equal((found, repairAlone, likely), (cured.IsFound, cured.IsRepairAloneSure, cured.IsLikely));
    }

    [Theory]
    [InlineData("owner", "wrong-mode-or-settings")]
    [InlineData("owner", "poor-cooling")]
    [InlineData("technician", "poor-heating")]
    public void Conclusion_BelowAnEvenChance_IsNeverCalledMostLikely(string role, string symptom)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("veldarn-nord", role, symptom);
        HiddenFault.Typical("none-of-these").Walk(walker);
        Segment[] said = [.. Spoken(walker).Where(segment => segment.Kind == SegmentKind.Conclusion)];
        Assert.NotEmpty(said);
        Assert.All(said.Where(segment => segment.Text.StartsWith("Most likely:", StringComparison.Ordinal)),
            segment => Assert.True(ShareOf(segment) >= 50, segment.Text));
    }

    [Fact]
    public void Verdict_OfARefrigerantLine_SaysTheFigureItself() =>
        Assert.Contains(Spoken(OverchargeOrAir()),
            segment => segment.From.Contains(new Provenance.Phrase("verdict-figure"))
            && segment.Text.StartsWith("That makes split 2", StringComparison.Ordinal));

    [Fact]
    public void Conclusion_AtTheEndOfTheWayToTheRepair_LeavesOutItsGrounds()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "poor-cooling");
        HiddenFault fault = HiddenFault.Typical("undercharge-leak");
        while (walker.Question.Kind != QuestionKind.Repair) fault.Answer(walker);
        Segment[] conclusions = [.. walker.Reply.Segments.Where(segment => segment.Kind == SegmentKind.Conclusion)];
        Assert.StartsWith("Found: Low charge from a leak", Assert.Single(conclusions).Text, StringComparison.Ordinal);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.StartsWith("Find and mend the leak first", StringComparison.Ordinal));
        Assert.Single(Spoken(walker), segment => segment.From.Contains(new Provenance.Phrase("conclusion-proof")));
    }

    private static Walker OverchargeOrAir()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("veldarn-nord", "refrigerant", "high-pressure-code");
        HiddenFault rest = HiddenFault.Typical("overcharge");
        while (walker.Question.Kind != QuestionKind.Repair && walker.State.ClosedHow is null)
            if (walker.Question.Kind == QuestionKind.Check
                && Answers.TryGetValue(walker.Question.Subject, out string? words))
                walker.Say(words);
            else rest.Answer(walker);
        return walker;
    }

    private static IEnumerable<Segment> Spoken(Walker walker) =>
        walker.Log.OfType<Replied>().SelectMany(replied => replied.Reply.Segments);

    private static double ShareOf(Segment said) => double.Parse(
        said.Text.Split(" %")[0].Split(", ")[^1], CultureInfo.InvariantCulture);
}
