using System.Text.Json;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Server.Commands.Asking;

/// <summary>Reads where a walk stands: results seen, faults excluded, the state of the unit.</summary>
internal static class PlanPosition
{
    /// <exception cref="RequestException">A part is of the wrong type, unknown, or there twice.</exception>
    /// <exception cref="ArgumentException">A name is unknown, or a result is impossible.</exception>
    public static Position Read(JsonElement request, SequencingProblem problem)
    {
        Position position = Excluding(request, problem, Seen(request, problem));
        return Request.OptionalText(request, "state") is { } state ? position.At(new AccessId(state)) : position;
    }

    private static Position Seen(JsonElement request, SequencingProblem problem)
    {
        Position position = problem.Begin();
        HashSet<CheckId> done = [];
        foreach (JsonElement seen in Request.OptionalItems(request, "seen"))
        {
            CheckId check = new(Request.Text(seen, "check"));
            if (!done.Add(check)) throw new RequestException($"\"seen\": check {check} is there twice");
            position = position.Saw(check, new OutcomeId(Request.Text(seen, "outcome")));
        }

        return position;
    }

    private static Position Excluding(JsonElement request, SequencingProblem problem, Position position)
    {
        foreach (JsonElement fault in Request.OptionalItems(request, "excluded"))
        {
            FaultId id = new(Request.Name(fault));
            if (problem.Faults.Any(known => known.Id == id)) position = position.Excluding(id);
            else if (!Request.Items(request, "faults").Any(known => Request.Text(known, "id") == id.Value))
                throw new RequestException($"\"excluded\": there is no fault {id}");
        }

        return position;
    }
}
