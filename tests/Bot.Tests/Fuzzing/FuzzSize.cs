using System.Globalization;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>How long inputs are fed.</summary>
/// <param name="Inputs">So many a part; null goes by time alone.</param>
/// <param name="Time">At most so long a part; null goes by count alone.</param>
/// <param name="Keeps">Whether what was found is added to the kept inputs.</param>
internal sealed record FuzzSize(long? Inputs, TimeSpan? Time, int Seed, bool Keeps)
{
    private const int UsualSeed = 20261126;

    /// <summary>
    /// As the environment has it: <c>DX_INPUTS</c> says how many, <c>DX_FUZZ</c> how many seconds, <c>DX_SEED</c> what
    /// is drawn from. Without the first two few inputs from a fixed seed, the same in each run.
    /// </summary>
    public static FuzzSize Given(int few)
    {
        var (inputs, seconds) = (Number("DX_INPUTS"), Number("DX_FUZZ"));
        bool isLong = (inputs ?? seconds) is not null;
        int seed = Number("DX_SEED") ?? (isLong ? Environment.TickCount & int.MaxValue : UsualSeed);
        return new FuzzSize(inputs
            ?? (seconds is null ? few : null), seconds is { } given ? TimeSpan.FromSeconds(given) : null, seed, isLong);
    }

    private static int? Number(string variable) => int.TryParse(
        Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        ? number
        : null;
}
