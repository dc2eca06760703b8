using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Server.Commands;

/// <summary>Reads a sequencing problem and a position in it.</summary>
internal static class PlanRequest
{
    /// <exception cref="RequestException">A part is missing or of the wrong type.</exception>
    /// <exception cref="ArgumentException">The parts do not fit together.</exception>
    public static SequencingProblem Problem(JsonElement request)
    {
        // A fault of prior 0 cannot be present, and a repair for nothing else is never useful.
        ImmutableArray<Fault> faults =
            [.. Request.Items(request, "faults").Select(Fault).Where(fault => fault.Weight != 0)];
        var known = faults.Select(fault => fault.Id).ToImmutableHashSet();
        var repairs = Request.Items(request, "repairs").Select(repair => Repair(repair, known))
            .Where(repair => !repair.Fixes.IsEmpty);
        return new SequencingProblem(
            Aim(request), faults, Request.Items(request, "checks").Select(Check), repairs, Access(request));
    }

    /// <summary>Where the walk stands: results seen, faults excluded, the state of the unit.</summary>
    /// <exception cref="ArgumentException">A name is unknown, or a result is impossible.</exception>
    public static Position Position(JsonElement request, SequencingProblem problem)
    {
        var position = problem.Begin();
        foreach (var seen in Request.OptionalItems(request, "seen"))
        {
            position = position.Saw(
                new CheckId(Request.Text(seen, "check")), new OutcomeId(Request.Text(seen, "outcome")));
        }

        foreach (var fault in Request.OptionalItems(request, "excluded"))
        {
            var id = new FaultId(fault.GetString() ?? "");
            if (problem.Faults.Any(known => known.Id == id)) position = position.Excluding(id);
            else if (!Request.Items(request, "faults").Any(f => Request.Text(f, "id") == id.Value))
                throw new RequestException($"there is no fault {id}");
        }

        return Request.OptionalText(request, "state") is { } state ? position.At(new AccessId(state)) : position;
    }

    private static Objective Aim(JsonElement request) => Request.OptionalText(request, "objective") switch
    {
        null or "repair" => Objective.Repair,
        "isolate" => Objective.Isolate,
        var other => throw new RequestException($"\"objective\" is repair or isolate, not {other}"),
    };

    private static AccessStates Access(JsonElement request)
    {
        ImmutableArray<AccessId> names =
            [.. Request.Items(request, "accessStates").Select(state => new AccessId(state.GetString() ?? ""))];
        var costs = Request.Items(request, "transitionCost")
            .Select(row => row.EnumerateArray().Select(cost => cost.GetDouble()).ToArray()).ToArray();
        if (costs.Length != names.Length || costs.Any(row => row.Length != names.Length))
        {
            throw new RequestException($"\"transitionCost\" must be {names.Length} rows of {names.Length} numbers");
        }

        var moves = names.SelectMany((from, i) => names.Select((to, j) => new AccessMove(from, to, costs[i][j])))
            .Where(move => move.From != move.To);
        var verify = Request.OptionalText(request, "verifyState") is { } state ? new AccessId(state) : (AccessId?)null;
        return new AccessStates(
            names.Select(name => new AccessState(name, Role.Anyone)), moves,
            new AccessId(Request.Text(request, "startState")), verify);
    }

    private static Fault Fault(JsonElement fault) =>
        new(new FaultId(Request.Text(fault, "id")), Request.Number(fault, "prior"));

    private static Check Check(JsonElement check)
    {
        ImmutableArray<OutcomeId> outcomes =
            [.. Request.Items(check, "outcomes").Select(outcome => new OutcomeId(outcome.GetString() ?? ""))];
        var rows = Request.Part(check, "likelihood").EnumerateObject().ToImmutableSortedDictionary(
            row => new FaultId(row.Name),
            row => outcomes.Select(outcome => Request.Number(row.Value, outcome.Value)).ToImmutableArray());
        return new Check(
            new CheckId(Request.Text(check, "id")), Request.Number(check, "cost"), AccessOf(check), Role.Anyone,
            outcomes, rows, []);
    }

    private static Repair Repair(JsonElement repair, ImmutableHashSet<FaultId> known) => new(
        new RepairId(Request.Text(repair, "id")), Request.Number(repair, "cost"), Request.Number(repair, "verifyCost"),
        AccessOf(repair), Role.Anyone,
        [.. Request.Items(repair, "fixes").Select(fault => new FaultId(fault.GetString() ?? "")).Where(known.Contains)]);

    private static ImmutableArray<AccessId> AccessOf(JsonElement part) =>
        [.. Request.Items(part, "access").Select(state => new AccessId(state.GetString() ?? ""))];
}
