using System.Collections.Immutable;

namespace DxAssistant.Server.Accounts;

/// <summary>A token that is to be made.</summary>
internal sealed record TokenRequest(string? Label, ImmutableArray<string>? Scopes);
