using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>
/// One case of check-values.json, which is published, or of worked-values.json, which is worked by hand.
/// </summary>
internal sealed record CheckCase(
    string Id, ImmutableSortedDictionary<string, CaseValue> Inputs, ImmutableSortedDictionary<string,
        CaseValue> Expected, string Source)
{
    /// <summary>Those of check-values.json alone.</summary>
    public static ImmutableArray<CheckCase> Published { get; } = ReadAll("check-values.json");

    public static ImmutableSortedDictionary<string, CheckCase> All { get; } = Load();

    public string Kind => Id[..Id.LastIndexOf('-')];

    public CalculationRequest Request => new(Id, AsInputs());

    public ImmutableSortedDictionary<string, CalculationValue> AsInputs() =>
        Inputs.ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value.AsInput(), StringComparer.Ordinal);

    private static ImmutableSortedDictionary<string, CheckCase> Load()
    {
        return Published.Concat(ReadAll("worked-values.json"))
            .ToImmutableSortedDictionary(item => item.Id, item => item, StringComparer.Ordinal);
    }

    private static ImmutableArray<CheckCase> ReadAll(string file)
    {
        using var document = JsonDocument.Parse(ReferenceFiles.Read(file));
        return [.. document.RootElement.EnumerateArray().Select(From)];
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
