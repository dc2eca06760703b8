namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A setting that the pages may give a value.</summary>
/// <param name="Usual">Its value where they do not; common practice, no source.</param>
/// <param name="Least">Included.</param>
/// <param name="Most">Included.</param>
internal sealed record SettingShape(string Name, double Usual, double Least, double Most, string Unit)
{
    /// <summary>What is counted is whole.</summary>
    public bool Fits(double value) =>
        value >= Least && value <= Most && (Unit != SettingShapes.Number || value % 1 == 0);
}
