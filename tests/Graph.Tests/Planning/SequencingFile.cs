using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>Reads tests/Reference/sequencing.json; the fields are explained in sequencing.md beside it.</summary>
public static class SequencingFile
{
    private static readonly Lazy<ImmutableArray<SequencingInstance>> Read = new(ReadAll);

    public static ImmutableArray<SequencingInstance> Instances => Read.Value;

    public static SequencingInstance Instance(string id) => Instances.Single(instance => instance.Id == id);

    public static TheoryData<string> Ids(params string[] types) =>
        [.. Instances.Where(instance => types.Length == 0 || types.Contains(instance.Type))
            .Select(instance => instance.Id)];

    private static ImmutableArray<SequencingInstance> ReadAll()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "Reference", "sequencing.json");
        using JsonDocument file = JsonDocument.Parse(File.ReadAllText(path));
        return [.. file.RootElement.GetProperty("instances").EnumerateArray().Select(ToInstance)];
    }

    private static SequencingInstance ToInstance(JsonElement json)
    {
        JsonElement optimal = json.GetProperty("optimal");
        return new SequencingInstance(
            Text(json, "id"), Text(json, "type"), ToProblem(json),
            json.TryGetProperty("publishedValue", out JsonElement published) ? published.GetDouble() : null,
            optimal.GetProperty("expectedCost").GetDouble(),
            [.. optimal.GetProperty("tiedFirstActions").EnumerateArray().Select(action => action.GetString()!)],
            optimal.GetProperty("firstActionValues").EnumerateObject()
                .ToImmutableSortedDictionary(value => value.Name, value => value.Value.GetDouble()),
            json.GetProperty("baselines").EnumerateObject().ToImmutableSortedDictionary(
                value => value.Name, value => value.Value.ValueKind == JsonValueKind.Null
                    ? (double?)null
                    : value.Value.GetDouble()));
    }

    private static SequencingProblem ToProblem(JsonElement json)
    {
        Objective objective = Text(json, "objective") == "repair" ? Objective.Repair : Objective.Isolate;
        ImmutableArray<Fault> faults =
        [
            .. json.GetProperty("faults").EnumerateArray()
                .Select(fault => new Fault(new FaultId(Text(fault, "id")), fault.GetProperty("prior").GetDouble())),
        ];
        return new SequencingProblem(
            objective, faults,
            json.GetProperty("checks").EnumerateArray().Select(check => ToCheck(check, faults)),
            json.GetProperty("repairs").EnumerateArray().Select(ToRepair),
            ToAccess(json));
    }

    private static AccessStates ToAccess(JsonElement json)
    {
        ImmutableArray<AccessId> ids = AccessOf(json, "accessStates");
        double[][] minutes = json.GetProperty("transitionCost").Deserialize<double[][]>()!;
        string? verify = json.GetProperty("verifyState").GetString();
        return new AccessStates(
            ids.Select(id => new AccessState(id, Role.Anyone)),
            from start in Enumerable.Range(0, ids.Length)
            from end in Enumerable.Range(0, ids.Length)
            where start != end
            select new AccessMove(ids[start], ids[end], minutes[start][end]),
            new AccessId(Text(json, "startState")),
            verify is null ? null : new AccessId(verify));
    }

    private static Check ToCheck(JsonElement json, ImmutableArray<Fault> faults)
    {
        ImmutableArray<OutcomeId> outcomes =
            [.. json.GetProperty("outcomes").EnumerateArray().Select(outcome => new OutcomeId(outcome.GetString()!))];
        JsonElement likelihood = json.GetProperty("likelihood");
        return new Check(
            new CheckId(Text(json, "id")), json.GetProperty("cost")
                .GetDouble(), AccessOf(json, "access"), Role.Anyone, outcomes,
            faults.ToImmutableSortedDictionary(fault => fault.Id,
                fault => Row(likelihood.GetProperty(fault.Id.Value), outcomes)),
            EveryOtherFault: []);
    }

    private static ImmutableArray<double> Row(JsonElement json, ImmutableArray<OutcomeId> outcomes) =>
        [.. outcomes.Select(outcome => json.GetProperty(outcome.Value).GetDouble())];

    private static Repair ToRepair(JsonElement json) => new(
        new RepairId(Text(json, "id")), json.GetProperty("cost").GetDouble(), json.GetProperty("verifyCost")
            .GetDouble(),
        AccessOf(json, "access"), Role.Anyone,
        [.. json.GetProperty("fixes").EnumerateArray().Select(fault => new FaultId(fault.GetString()!))]);

    private static ImmutableArray<AccessId> AccessOf(JsonElement json, string field) =>
        [.. json.GetProperty(field).EnumerateArray().Select(state => new AccessId(state.GetString()!))];

    private static string Text(JsonElement json, string field) => json.GetProperty(field).GetString()!;
}
