namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>From odds to probabilities and back.</summary>
internal static class Logistic
{
    /// <summary>The least probability that counts.</summary>
    private const double Floor = 1e-4;

    /// <param name="odds">The logarithm of the odds.</param>
    public static double Of(double odds) => 1 / (1 + Math.Exp(-odds));

    /// <summary>The logarithm of a probability, for one of 0 too.</summary>
    public static double Log(double probability) => Math.Log(Math.Max(probability, Floor));
}
