using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Simulating;

/// <summary>How warm it is around a simulated unit.</summary>
/// <param name="Indoor">°C.</param>
/// <param name="Outdoor">°C.</param>
internal sealed record Surroundings(double Indoor, double Outdoor)
{
    /// <summary>A room of 17 to 29 °C and a day of 2 to 38 °C.</summary>
    public static Surroundings Drawn(Draws draws) =>
        new(17 + 12 * draws.NextShare(), 2 + 36 * draws.NextShare());
}
