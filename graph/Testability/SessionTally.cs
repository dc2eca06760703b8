namespace DxAssistant.Graph.Testability;

/// <summary>What one session took.</summary>
/// <param name="Repairs">Repairs done, the last one included; a hand-over is none.</param>
/// <param name="Mended">False when the case was handed over.</param>
public sealed record SessionTally(int Checks, int Repairs, double Minutes, bool Mended)
{
    /// <summary>Repairs that did not help.</summary>
    public int RepairsInVain => Mended ? Repairs - 1 : Repairs;
}
