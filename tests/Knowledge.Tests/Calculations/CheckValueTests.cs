using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>
/// Every case of tests/Reference/check-values.json and worked-values.json; the source stands beside each number there
/// and in the test's name.
/// </summary>
public sealed class CheckValueTests
{
    public static TheoryData<string, string> Cases()
    {
        var data = new TheoryData<string, string>();
        foreach (var (id, item) in CheckCase.All)
            data.Add(id, item.Source);
        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Run_PublishedCase_AgreesWithinTolerance(string id, string source)
    {
        var item = CheckCase.All[id];
        var result = CalculationCatalogue.Run(item.Request);
        if (item.Expected.TryGetValue("status", out var status))
        {
            Assert.Equal(status.Value.GetString(), result is CalculationResult.OutOfRange ? "out-of-range"
                : result is CalculationResult.InvalidInput ? "invalid-input" : "");
            return;
        }
        Assert.True(result is CalculationResult.Answer, $"{result} ({source})");
        var answer = (CalculationResult.Answer)result;
        Assert.Equal(item.Expected.Keys.Order(StringComparer.Ordinal),
            answer.Values.Select(value => value.Symbol).Order(StringComparer.Ordinal));
        foreach (var value in answer.Values)
            CaseAssert.Equal(item.Expected[value.Symbol], value.Value);
    }

    [Fact]
    public void Cases_File_HoldsAllOfThem() => Assert.Equal(343, CheckCase.Published.Length);
}
