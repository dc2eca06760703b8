using System.Collections.Immutable;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Where walks can begin: series, and the symptoms that each of them shows.</summary>
internal static class WalkChoices
{
    /// <returns>Null without a library.</returns>
    public static JsonObject? Of(Library? library) => library is null ? null : new JsonObject
    {
        ["series"] = new JsonArray([.. library.Series.Values.Select(page => (JsonNode)new JsonObject
        {
            ["id"] = page.Id, ["title"] = page.Title.Text, ["symptoms"] = Shown(library, page),
        })]),
        ["symptoms"] = new JsonArray(
            [.. library.Symptoms.Values.Select(page => (JsonNode)new JsonObject
            {
                ["id"] = page.Id.Value, ["title"] = page.Title.Text,
            })]),
    };

    private static JsonArray Shown(Library library, SeriesPage series)
    {
        ImmutableSortedSet<Graph.Model.FaultId> applicable = PlanProblem.FaultsOf(library, series);
        return [.. library.Symptoms.Values.Where(page => library.Graph.Find(page.Id) is { } symptom
            && symptom.Causes.Keys.Any(fault => fault != Graph.Model.FaultId.NoneOfThese && applicable.Contains(fault)))
            .Select(page => (JsonNode)page.Id.Value)];
    }
}
