using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>The drawn walk against the conversation itself, along the likeliest answers.</summary>
public sealed class WalkParityTests
{
    private const int Steps = 3, EachOf = 5;

    private static Library Library => ShippedContent.Library;

    public static TheoryData<string> Series => [.. Library.Series.Keys];

    [Theory]
    [MemberData(nameof(Series))]
    public void Walk_FirstSteps_AreThoseOfTheConversation(string series)
    {
        SeriesPage page = Library.Series[series];
        SymptomPage[] shown =
            [.. Library.Symptoms.Values.Where(symptom => PlanProblem.Of(Library, page, symptom.Id) is not null)];
        foreach (SymptomPage symptom in shown.Where((_, place) => place % EachOf == 0))
        {
            SequencingProblem problem = PlanProblem.Of(Library, page, symptom.Id)!;
            var rules = new WalkRules(Library, problem, PlanProblem.SituationOf(Library, page, symptom.Id), symptom.Id,
                WalkPage.UsualWork);
            WalkNode drawn = new WalkTree(problem, (here, _) => rules.Next(here)).Grow(2 * Steps);
            Assert.Equal($"{symptom.Id}: {string.Join(", ", Drawn(drawn).Take(Steps))}",
                $"{symptom.Id}: {string.Join(", ", Said(page, symptom, drawn).Take(Steps))}");
        }
    }

    private static IEnumerable<string> Drawn(WalkNode node)
    {
        for (WalkNode? here = node; here?.Step is { } step; here = Likeliest(here)?.Next)
            yield return Name(step);
    }

    private static WalkBranch? Likeliest(WalkNode node) =>
        node.Step is PlannedStep.DoCheck ? node.Branches.MaxBy(branch => Math.Round(branch.Probability, 9)) : null;

    private static string Name(PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => check.Check.Value,
        PlannedStep.DoRepair repair => repair.Repair.Value,
        _ => "nothing",
    };

    // What the conversation asks, answered as the drawing's likeliest branch says.
    private static IEnumerable<string> Said(SeriesPage series, SymptomPage symptom, WalkNode drawn)
    {
        var walker = new Walker(ShippedContent.Assistant, Fold.Apply(CaseState.New,
        [
            new Opened(Library.Version), new SeriesChosen(series.Id),
            new RoleStated(Library.Roles.MaxBy(page => page.Role.Rank)!.Role.Id),
            new SymptomReported(symptom.Id.Value, 1, symptom.Title.Text),
        ]));
        walker.Send(new MessageBody.Opening());
        for (WalkNode? here = drawn; here?.Step is not null; here = Likeliest(here)?.Next)
        {
            walker.MakeSafe();
            yield return walker.State.Step?.Id ?? "nothing";
            if (Likeliest(here) is { Outcome: { } outcome }) walker.Tap(outcome.Value);
        }
    }
}
