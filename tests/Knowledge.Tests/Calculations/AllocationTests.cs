using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Knowledge.Tests.Judging;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>No calculation, verdict or reading takes more memory than its answer needs. Bytes are counted, not
/// time.</summary>
public sealed class AllocationTests
{
    // Fifty times the largest answer with its derivation would be a storm; the largest known is a tenth of this.
    private const long MostBytes = 200_000;

    public static TheoryData<string> Calculations() => [.. CalculationCatalogue.All.Keys];

    public static TheoryData<string> Judges() => [.. JudgeCatalogue.All.Keys];

    [Theory]
    [MemberData(nameof(Calculations))]
    public void Run_OneCase_AllocatesLittle(string name)
    {
        var request = CheckCase.All.Values.First(item => CalculationCatalogue.Find(item.Request)?.Name == name).Request;
        Assert.InRange(Bytes(() => CalculationCatalogue.All[name].Run(request.Inputs)), 0, MostBytes);
    }

    [Theory]
    [MemberData(nameof(Judges))]
    public void Judge_OneRequest_AllocatesLittle(string name)
    {
        var request = GoodRequests.Of(name);
        Assert.InRange(Bytes(() => JudgeCatalogue.All[name].Judge(request)), 0, MostBytes);
    }

    [Fact]
    public void Parse_TenTimesTheText_AllocatesInProportion()
    {
        static string Report(int times) =>
            string.Concat(Enumerable.Repeat("it reads 2.1k at 24C and the coil 10.4k. ", times));
        var (some, tenTimes) = (Bytes(() => ReadingParser.Parse(Report(20), ReadingContext.None)),
            Bytes(() => ReadingParser.Parse(Report(200), ReadingContext.None)));
        Assert.InRange(tenTimes, some, 12 * some);
    }

    private static long Bytes(Func<object?> act)
    {
        act();
        var before = GC.GetAllocatedBytesForCurrentThread();
        act();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
