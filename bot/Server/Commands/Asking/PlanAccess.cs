using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Graph.Model;

namespace DxAssistant.Server.Commands.Asking;

/// <summary>Reads the access states of a sequencing problem and the minutes between them.</summary>
internal static class PlanAccess
{
    // Sums of minutes that differ by less are the same.
    private const double Rounding = 1e-9;

    /// <exception cref="RequestException">A part is missing, of the wrong type or out of its range.</exception>
    public static AccessStates Read(JsonElement request)
    {
        ImmutableArray<AccessId> names =
            [.. Request.Items(request, "accessStates").Select(state => new AccessId(Request.Name(state)))];
        if (names.Distinct().Count() < names.Length) throw new RequestException("an access state is there twice");
        double[][] minutes = Minutes(request, names);
        foreach (int way in Enumerable.Range(0, names.Length)) RefuseDetours(names, minutes, way);
        var moves = names.SelectMany((from, i) => names.Select((to, j) => new AccessMove(from, to, minutes[i][j])))
            .Where(move => move.From != move.To);
        AccessId? verify = Request.OptionalText(request, "verifyState") is { } state ? Known(names, state) : null;
        return new AccessStates(
            names.Select(name => new AccessState(name, Role.Anyone)), moves,
            Known(names, Request.Text(request, "startState")), verify);
    }

    /// <summary>Where a check or repair may be done.</summary>
    /// <exception cref="RequestException">It is missing or of the wrong type.</exception>
    public static ImmutableArray<AccessId> Of(JsonElement part) =>
        [.. Request.Items(part, "access").Select(state => new AccessId(Request.Name(state)))];

    private static AccessId Known(ImmutableArray<AccessId> names, string name) =>
        names.Contains(new AccessId(name))
            ? new AccessId(name) : throw new RequestException($"there is no access state {name}");

    private static double[][] Minutes(JsonElement request, ImmutableArray<AccessId> names)
    {
        JsonElement[] rows = [.. Request.Items(request, "transitionCost")];
        if (rows.Length != names.Length
            || rows.Any(row => row.ValueKind != JsonValueKind.Array || row.GetArrayLength() != names.Length))
            throw new RequestException($"\"transitionCost\" must be {names.Length} rows of {names.Length} numbers");
        double[][] minutes =
        [
            .. rows.Select((row, from) => row.EnumerateArray().Select((cost, to) => PlanRequest.Minutes(
                cost, $"the transitionCost from {names[from]} to {names[to]}")).ToArray()),
        ];
        for (int state = 0; state < names.Length; state++)
            if (minutes[state][state] != 0)
                throw new RequestException($"the transitionCost from {names[state]} to itself must be 0");
        return minutes;
    }

    private static void RefuseDetours(ImmutableArray<AccessId> names, double[][] minutes, int way)
    {
        for (int from = 0; from < names.Length; from++)
            for (int to = 0; to < names.Length; to++)
                if (minutes[from][way] + minutes[way][to] < minutes[from][to] - Rounding)
                    throw new RequestException(
                        $"\"transitionCost\": from {names[from]} to {names[to]} it is shorter by way of {names[way]}; a detour must not pay");
    }
}
