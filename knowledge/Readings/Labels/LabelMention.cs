namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>A label found among the tokens.</summary>
/// <param name="First">Its first token.</param>
/// <param name="End">The token after its last.</param>
/// <param name="Text">How it is written on the form, or in one form for all spellings.</param>
/// <param name="Count">For <see cref="LabelKind.All"/>, how many were said; 0 if not said.</param>
internal sealed record LabelMention(int First, int End, string Text, LabelKind Kind, int Count = 0)
{
    public bool NamesTerminals => Kind is LabelKind.Asked or LabelKind.Terminal;
}
