using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>Who may do what.</summary>
public sealed record RolePage(Role Role, Passage Name, Passage MayDo);
