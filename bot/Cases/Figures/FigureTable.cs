using System.Collections.Immutable;

namespace DxAssistant.Cases.Figures;

/// <summary>One table of figures.</summary>
/// <param name="Name">One word or several with dashes, as a command names it.</param>
public sealed record FigureTable(string Name, ImmutableArray<string> Heads,
    ImmutableArray<ImmutableArray<string>> Rows);
