using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>
/// A unit with a fault drawn for a case, and what each check will show on it, whenever and by whomever it is done.
/// </summary>
internal sealed class HiddenUnit
{
    private readonly ShippedCase _case;
    private readonly FaultId _fault;
    private readonly ImmutableSortedDictionary<CheckId, OutcomeId> _shows;

    public HiddenUnit(ShippedCase begun, Draws draws)
    {
        _case = begun;
        var faults = begun.Believe([]).Ranked.OrderBy(ranked => ranked.Id).ToArray();
        _fault = faults[draws.NextPlace(faults.Select(ranked => ranked.Probability).ToArray())].Id;
        _shows = begun.Graph.Checks.ToImmutableSortedDictionary(
            check => check.Id, check => check.Outcomes[draws.NextPlace(check.Row(_fault).AsSpan())]);
    }

    /// <summary>The case as it begins.</summary>
    public SequencingProblem Beginning => _case.After([], _case.Situation.Access)!;

    public string Name => _case.Name;

    /// <summary>
    /// Minutes of the whole walk, wrong parts at their price, each step planned anew as a conversation does.
    /// </summary>
    public double Minutes(IPlanner planner, Dictionary<string, PlannedStep> known)
    {
        List<Evidence> evidence = [];
        var standing = _case.Situation.Access;
        var way = $"{_case.Name}";
        for (double minutes = 0; ;)
        {
            var problem = _case.After(evidence, standing)!;
            if (!known.TryGetValue(way, out var step)) known[way] = step = planner.Next(problem, problem.Begin());
            switch (step)
            {
                case PlannedStep.DoCheck check:
                    minutes += problem.Access.Minutes(standing, check.Access) + _case.Graph.Find(check.Check)!.Minutes;
                    evidence.Add(Evidence.Seen(_case.Graph.Find(check.Check)!, _shows[check.Check]));
                    (standing, way) = (check.Access, $"{way};{check.Access}:{check.Check}={_shows[check.Check]}");
                    break;
                case PlannedStep.DoRepair repair:
                    var work = problem.Repairs.First(possible => possible.Id == repair.Repair);
                    var after = problem.Access.Verify ?? repair.Access;
                    minutes += problem.Access.Minutes(standing, repair.Access) + work.Minutes
                        + problem.Access.Minutes(repair.Access, after) + work.VerifyMinutes;
                    if (work.Id == RepairId.HandOver || work.Fixes.Contains(_fault)) return minutes;
                    minutes += work.WrongMinutes;
                    evidence.Add(new Evidence.RepairFailed(repair.Repair));
                    (standing, way) = (after, $"{way};{repair.Repair}");
                    if (_case.After(evidence, standing) is null) return minutes;
                    break;
                default:
                    return minutes;
            }
        }
    }
}
