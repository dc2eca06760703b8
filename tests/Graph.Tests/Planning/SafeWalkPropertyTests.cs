using System.Collections.Immutable;
using CsCheck;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using Check = DxAssistant.Graph.Model.Check;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>
/// Whatever the graph, the person and the answers, nothing is planned that the person may not do, or where the unit may
/// not be brought. CsCheck prints the seed of a case that fails.
/// </summary>
public sealed class SafeWalkPropertyTests
{
    private static readonly ImmutableArray<AccessId> States =
        [new("closed"), new("isolated"), new("running"), new("gauges")];

    [Fact]
    public void Next_AnyPersonAndAnswers_StaysWithinRoleAndOpenStates() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 2], Gen.Int[0, 3]).Sample((seed, rank, refused) =>
        {
            Random random = new(seed);
            FaultGraph graph = Graph(random);
            Situation situation = new(new Role("person", rank), States[0])
            {
                RefusedAccess = refused == 0 ? [] : [States[refused]],
                BarredChecks = [new CheckId($"c{random.Next(6)}")],
            };
            Walk(graph, situation, random);
        }, iter: 150);

    private static void Walk(FaultGraph graph, Situation situation, Random random)
    {
        List<Evidence> known = [];
        for (int turn = 0; turn < 12; turn++)
        {
            if (CaseProblem.From(graph, graph.Believe(known), situation).Problem is not { } problem) return;
            switch (new LivePlanner(20_000).Next(problem, problem.Begin()))
            {
                case PlannedStep.DoCheck step:
                    Check check = graph.Find(step.Check)!;
                    Assert.DoesNotContain(step.Check, situation.BarredChecks);
                    AssertAllowed(graph, situation, check.Who, check.Access, step.Access);
                    known.Add(Evidence.Seen(check, check.Outcomes[random.Next(check.Outcomes.Length)]));
                    situation = situation with { Access = step.Access };
                    break;
                case PlannedStep.DoRepair step when step.Repair != RepairId.HandOver:
                    Repair repair = graph.Find(step.Repair)!;
                    AssertAllowed(graph, situation, repair.Who, repair.Access, step.Access);
                    known.Add(new Evidence.RepairFailed(step.Repair));
                    situation = situation with { Access = States[0] };
                    break;
                default:
                    return;
            }
        }
    }

    private static void AssertAllowed(
        FaultGraph graph, Situation situation, Role needed, ImmutableArray<AccessId> possible, AccessId planned)
    {
        Assert.True(situation.Who.May(needed));
        Assert.Contains(planned, possible);
        Assert.DoesNotContain(planned, situation.RefusedAccess);
        Assert.True(situation.Who.May(graph.Access.All.First(state => state.Id == planned).Who));
    }

    // Every fault has a repair, every state a role, and the ways lead from each state to each.
    private static FaultGraph Graph(Random random)
    {
        Role Someone() => new("needed", random.Next(3));
        ImmutableArray<AccessId> Somewhere() => [States[random.Next(4)]];
        string[] faults = ["f0", "f1", "f2", "f3", "f4"];
        return FaultGraph.Build(
            faults.Select(fault => Parts.Fault(fault, random.Next(1, 10))), [],
            Enumerable.Range(0, 6).Select(number => Parts.Check(
                $"c{number}", random.Next(1, 10), 0.1, [.. faults.Select(fault => (fault, random.Next(1, 99) / 100.0))])
                with { Access = Somewhere(), Who = Someone() }),
            faults.Select(fault => Parts.Repair($"r-{fault}", random.Next(5, 40), fault)
                with { Access = Somewhere(), Who = Someone() }),
            new AccessStates(
                States.Select((state, place) => new AccessState(state, place == 0 ? Role.Anyone : Someone())),
                (from start in States from end in States
                    where start != end select new AccessMove(start, end, random.Next(2, 12))).ToArray(),
                States[0], States[0]));
    }
}
