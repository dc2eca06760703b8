namespace DxAssistant.Server.Accounts;

/// <summary>A password of one's own that is to be changed.</summary>
/// <param name="Password">The present one.</param>
/// <param name="Fresh">The one that is to be.</param>
internal sealed record PasswordRequest(string? Name, string? Password, string? Fresh);
