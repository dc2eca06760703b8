namespace DxAssistant.Knowledge.Readings;

/// <summary>A stretch of a message.</summary>
/// <param name="Start">Characters before it.</param>
/// <param name="Length">In characters.</param>
public readonly record struct TextSpan(int Start, int Length)
{
    public int End => Start + Length;
}
