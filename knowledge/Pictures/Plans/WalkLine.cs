namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>One line of a step's box.</summary>
/// <param name="Y">Its foot, from the top of the box.</param>
internal sealed record WalkLine(string Look, string Text, int Size, bool IsBold, double Y)
{
    /// <summary>The way that leaves the box at this line.</summary>
    public WalkRow? Way { get; init; }

    /// <summary>True when a rule is drawn above it.</summary>
    public bool IsRule { get; init; }
}
