using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>A cell of wordings, with commas between them.</summary>
internal static class SaidAs
{
    public static ImmutableArray<string> Split(RichText? cell) =>
        [.. (cell?.Text ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}
