namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>One word of a text, folded to lower-case ASCII.</summary>
/// <param name="StartsClause">Punctuation stood before it.</param>
internal readonly record struct Word(string Text, bool StartsClause)
{
    public override string ToString() => StartsClause ? "| " + Text : Text;
}
