namespace DxAssistant.Server.Simulating;

/// <summary>What is to be simulated.</summary>
/// <param name="Walks">For each symptom, series and role.</param>
/// <param name="Symptom">The only symptom to play; null for all.</param>
/// <param name="Series">The only series to play; null for all.</param>
/// <param name="Role">The only role to play; null for all.</param>
internal sealed record SimulationOrder(int Walks, ulong Seed, string? Symptom, string? Series, string? Role)
{
    /// <summary>The only play; null for all, each with its share.</summary>
    public Play? Play { get; init; }
}
