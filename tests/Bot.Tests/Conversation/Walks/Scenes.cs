using DxAssistant.Conversation;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Bot.Tests.Conversation.Walks;

/// <summary>What the rules over the plan look at, in a case on the shipped pages.</summary>
internal static class Scenes
{
    /// <param name="plan">null for the planner's own.</param>
    public static WalkScene Of(CaseState state, Plan? plan = null)
    {
        CaseView view = new(ShippedContent.Library, state);
        SequencingProblem problem = CaseProblem.From(
            ShippedContent.Library.Graph, view.Belief, new Situation(view.Role, view.Access)
            {
                HandOverMinutes = ShippedContent.Library.HandOverMinutes,
            }).Problem!;
        return new WalkScene(problem, plan ?? new LivePlanner().Plan(problem, problem.Begin()), view.Role);
    }

    /// <summary>A plan that weighs these steps, best first.</summary>
    public static Plan Plan(params (PlannedStep Step, double Minutes)[] options) => new(
        options[0].Step, options[0].Minutes, 0, false,
        [.. options.Select(option => new PlanOption(option.Step, 1, option.Minutes, 0))], 1);

    /// <summary>A technician at a fan that the unit itself reports.</summary>
    public static Walker FanCode() =>
        new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
}
