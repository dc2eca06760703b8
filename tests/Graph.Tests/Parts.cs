using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests;

/// <summary>Short ways to write the parts of a graph.</summary>
internal static class Parts
{
    public static AccessId Any { get; } = new("any");

    public static Fault Fault(string id, double weight = 1) => new(new FaultId(id), weight);

    public static Symptom Symptom(string id, params (string Fault, double Probability)[] causes) => new(
        new SymptomId(id),
        causes.ToImmutableSortedDictionary(cause => new FaultId(cause.Fault), cause => cause.Probability));

    /// <summary>A check with the outcomes "pass" and "fail", done anywhere by anyone.</summary>
    /// <param name="fails">P(fail | fault) of the faults listed.</param>
    public static Check Check(string id, double minutes, double elseFails,
        params (string Fault, double Fails)[] fails) => new(
        new CheckId(id), minutes, [Any], Role.Anyone, [new OutcomeId("pass"), new OutcomeId("fail")],
        fails.ToImmutableSortedDictionary(row => new FaultId(row.Fault), row => Row(row.Fails)),
        Row(elseFails));

    public static Repair Repair(string id, double minutes, params string[] fixes) => new(
        new RepairId(id), minutes, 0, [Any], Role.Anyone, [.. fixes.Select(fault => new FaultId(fault))]);

    private static ImmutableArray<double> Row(double fails) => [1 - fails, fails];
}
