using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>Whatever stands in a request for a calculation, the answer is a number or says why not.</summary>
public sealed class CalcEdgeTests
{
    // Each takes the place of the value of one input.
    private static readonly string[] Values =
    [
        "0", "-0.0", "-1", "1", "1e-300", "1e300", "1e400", "-1e400", "-300", "12345678901234567890", "0.1e-5",
        "\"NaN\"", "\"12\"", "\"\"", "\"  \"", "\"R-999\"", "\"\\u0000\"", "null", "true", "[]", "[1]",
        "[1,2,3,4,5,6,7]",
        "[1,null]", "[1,\"a\"]", "[\"a\",\"b\"]", "[0,0,0]", "[-1,-2]", "[1e400]", "{}", "[[1]]",
    ];

    // Each takes the place of the unit.
    private static readonly string[] UnitTexts =
        ["\"\"", "\"furlong\"", "\"K\"", "\"ohm\"", "\"degF\"", "\"psig\"", "\"%\"", "null", "5", "[]", "\"OHM\"",
            "\"\\u00b0\""];

    public static TheoryData<string> Kinds() => [.. Cases.Value.Keys];

    private static readonly Lazy<Dictionary<string, JsonObject>> Cases = new(() =>
        new[] { "check-values.json", "worked-values.json" }.SelectMany(file =>
                JsonNode.Parse(File.ReadAllText(Repository.PathOf("tests", "Reference", file)))!.AsArray())
            .Select(item => item!.AsObject()).GroupBy(item => Kind((string)item["id"]!), StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Answer_OneValueReplaced_IsAResultOrAStatus(string kind)
    {
        foreach (var (name, _) in Inputs(kind))
            foreach (var value in Values)
                AssertSound(With(kind, name, "value", value));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Answer_OneUnitReplaced_IsAResultOrAStatus(string kind)
    {
        foreach (var (name, _) in Inputs(kind))
            foreach (var unit in UnitTexts)
                AssertSound(With(kind, name, "unit", unit));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Answer_AllValuesReplaced_IsAResultOrAStatus(string kind)
    {
        foreach (var value in Values)
        {
            var request = Fresh(kind);
            foreach (var (_, input) in request["inputs"]!.AsObject())
                input!["value"] = JsonNode.Parse(value);
            AssertSound(request);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Answer_PartsLeftOut_IsInvalidInput(string kind)
    {
        foreach (var (name, _) in Inputs(kind))
        {
            AssertSound(Changed(kind, inputs => inputs.Remove(name)));
            AssertSound(Changed(kind, inputs => inputs[name]!.AsObject().Remove("unit")));
            AssertInvalid(Changed(kind, inputs => inputs[name]!.AsObject().Remove("value")));
            AssertInvalid(Changed(kind, inputs => inputs[name] = null));
            AssertInvalid(Changed(kind, inputs => inputs[name] = 5));
        }

        AssertInvalid(new JsonObject { ["id"] = kind + "-01" });
        AssertInvalid(new JsonObject { ["id"] = kind + "-01", ["inputs"] = new JsonObject() });
        AssertInvalid(new JsonObject { ["id"] = kind + "-01", ["inputs"] = new JsonArray() });
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Answer_SomethingMoreThanNeeded_IsNoMatter(string kind)
    {
        var plain = Answer(Fresh(kind));
        var more = Fresh(kind);
        more["topic"] = "anything";
        more["inputs"]!["colour"] = JsonNode.Parse("""{"value":"red","unit":""}""");
        more["inputs"]!.AsObject().First().Value!["note"] = "from the van";
        Assert.Equal(plain.ToJsonString(), Answer(more).ToJsonString());
    }

    [Theory]
    [InlineData("ntc-beta-r", "R25", "furlong", "furlong", "kΩ")]
    [InlineData("superheat", "p_gauge", "volts", "volts", "psig")]
    [InlineData("unb-nema", "V1", "Vrms", "Vrms", "mV")]
    public void Answer_UnknownUnit_IsNamedWithThoseAccepted(
        string kind, string input, string unit, string said, string accepted)
    {
        var answer = Answer(With(kind, input, "unit", $"\"{unit}\""));
        Assert.Equal("invalid-input", (string?)answer["status"]);
        Assert.Contains(input, (string?)answer["message"], StringComparison.Ordinal);
        Assert.Contains(said, (string?)answer["message"], StringComparison.Ordinal);
        Assert.Contains(accepted, (string?)answer["message"], StringComparison.Ordinal);
    }

    private static string Kind(string id) => id[..id.LastIndexOf('-')];

    private static JsonObject Fresh(string kind) => new()
    {
        ["id"] = Cases.Value[kind]["id"]!.DeepClone(), ["inputs"] = Cases.Value[kind]["inputs"]!.DeepClone(),
    };

    private static JsonObject Inputs(string kind) => Cases.Value[kind]["inputs"]!.AsObject();

    private static JsonObject Changed(string kind, Action<JsonObject> change)
    {
        var request = Fresh(kind);
        change(request["inputs"]!.AsObject());
        return request;
    }

    private static JsonObject With(string kind, string input, string part, string json) =>
        Changed(kind, inputs => inputs[input]![part] = JsonNode.Parse(json));

    private static JsonObject Answer(JsonObject request)
    {
        using var document = JsonDocument.Parse(request.ToJsonString());
        return CalcCommand.Answer(document.RootElement);
    }

    private static void AssertInvalid(JsonObject request) => Assert.True(
        (string?)Answer(request)["status"] == "invalid-input", request.ToJsonString());

    private static void AssertSound(JsonObject request)
    {
        var answer = Answer(request);
        var said = $"{request.ToJsonString()} gave {answer.ToJsonString()}";
        Assert.True(answer.ContainsKey("id"), said);
        if (answer["status"] is { } status)
        {
            Assert.True((string?)status is "invalid-input" or "out-of-range", said);
            Assert.False(string.IsNullOrWhiteSpace((string?)answer["message"]), said);
            Assert.DoesNotContain("Exception", (string?)answer["message"], StringComparison.Ordinal);
            return;
        }

        // A number that is none cannot be written as JSON, so a result that is written holds none.
        Assert.True(answer["result"] is JsonObject { Count: > 0 }, said);
    }
}
