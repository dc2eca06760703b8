using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>One field that a kind of page has in its front matter.</summary>
/// <param name="RefersTo">The kind of page, or the roles, whose ids it takes.</param>
internal sealed record FieldShape(
    string Name, FieldType Type, bool Required, ImmutableArray<string> Choices = default, PageKind? RefersTo = null);
