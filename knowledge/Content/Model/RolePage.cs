using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>Who may do what.</summary>
/// <param name="SaidAs">How people say that they are, or speak with, such a person.</param>
public sealed record RolePage(Role Role, Passage Name, Passage MayDo, ImmutableArray<string> SaidAs);
