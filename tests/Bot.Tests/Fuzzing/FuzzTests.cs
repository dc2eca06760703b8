using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever comes to a part of the program, it takes it without a fault.</summary>
/// <remarks><c>DX_INPUTS=100000</c> or <c>DX_FUZZ=600</c> (seconds) go on for longer.</remarks>
public sealed class FuzzTests(ITestOutputHelper output)
{
    public static TheoryData<string> Parts => new(FuzzParts.All.Keys);

    [Theory]
    [MemberData(nameof(Parts))]
    public async Task Take_AnyInput_IsTaken(string name)
    {
        await using var part = FuzzParts.All[name]();
        output.WriteLine($"{await new FuzzRun(part, FuzzSize.Given(part.Few)).RunAsync()}");
    }
}
