using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>One line <c>name: value</c> or <c>name: [value, value]</c> of the front matter.</summary>
internal sealed record FrontMatterField(
    string Name, TextSpan NameSpan, ImmutableArray<FrontMatterValue> Values, bool IsList)
{
    public string? Text => IsList || Values.IsEmpty ? null : Values[0].Text;

    public TextSpan Span => Values.IsEmpty ? NameSpan : TextSpan.Between(Values[0].Span.Start, Values[^1].Span.End);
}
