using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>One case of check-values.json.</summary>
internal sealed record CheckCase(
    string Id, ImmutableSortedDictionary<string, CaseValue> Inputs, ImmutableSortedDictionary<string,
        CaseValue> Expected, string Source)
{
    public static ImmutableSortedDictionary<string, CheckCase> All { get; } = Load();

    public string Kind => Id[..Id.LastIndexOf('-')];

    public CalculationRequest Request => new(Id, AsInputs());

    public ImmutableSortedDictionary<string, CalculationValue> AsInputs() =>
        Inputs.ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value.AsInput(), StringComparer.Ordinal);

    private static ImmutableSortedDictionary<string, CheckCase> Load()
    {
        using var document = JsonDocument.Parse(ReferenceFiles.Read("check-values.json"));
        return document.RootElement.EnumerateArray().Select(From)
            .ToImmutableSortedDictionary(item => item.Id, item => item, StringComparer.Ordinal);
    }

    private static CheckCase From(JsonElement element) => new(
        element.GetProperty("id").GetString()!, Values(element.GetProperty("inputs")),
        Values(element.GetProperty("expected")),
        element.GetProperty("source").GetString()!);

    private static ImmutableSortedDictionary<string, CaseValue> Values(JsonElement element) =>
        element.Clone().EnumerateObject()
        .ToImmutableSortedDictionary(property => property.Name, property =>
            CaseValue.From(property.Value), StringComparer.Ordinal);
}
