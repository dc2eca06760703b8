using DxAssistant.Knowledge.Clarifying;
using Xunit.Abstractions;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>First messages judged by the symptom they lead to. The floors lie a little under what is reached.</summary>
public sealed class ComplaintEvaluationTests(ITestOutputHelper output)
{
    // Source: tests/Reference/evaluation/README.md (phrases of the project's own).
    [Theory]
    [InlineData("symptoms-dev.jsonl", 0.97, 0.99, 0.8, 0.99)]
    [InlineData("symptoms-dev-2.jsonl", 0.95, 0.97, 0.8, 0.99)]
    public void Match_Complaints_StayAboveTheFloor(string file, double first, double amongThree, double certain,
        double certainRight)
    {
        var judged = JudgedComplaint.Read(file)
            .Select(complaint => (complaint.Symptom, Answer: ShippedMatcher.Match(complaint.Text))).ToList();
        var sure = judged.Where(line => Offering.CertainSymptom(line.Answer) is not null).ToList();
        var reached = (
            First: Share(judged, line => line.Answer.Symptoms.Take(1).Any(found => found.Id == line.Symptom)),
            AmongThree: Share(judged, line => line.Answer.Symptoms.Take(3).Any(found => found.Id == line.Symptom)),
            Certain: (double)sure.Count / judged.Count,
            CertainRight: Share(sure, line => Offering.CertainSymptom(line.Answer) == line.Symptom));
        output.WriteLine($"{file}: {reached}");
        Assert.True(reached.First >= first && reached.AmongThree >= amongThree, reached.ToString());
        Assert.True(reached.Certain >= certain && reached.CertainRight >= certainRight, reached.ToString());
    }

    private static double Share<T>(List<T> all, Func<T, bool> holds) => (double)all.Count(holds) / all.Count;
}
