using System.Collections.Immutable;

namespace DxAssistant.Server.Accounts;

/// <summary>What is to be so about an account; what is left out stays as it is.</summary>
internal sealed record AccountRequest(string? Name, string? Password, ImmutableArray<string>? Roles, bool? Open);
