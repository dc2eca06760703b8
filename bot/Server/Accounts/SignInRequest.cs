namespace DxAssistant.Server.Accounts;

/// <summary>Name and password as the page sends them.</summary>
internal sealed record SignInRequest(string? Name, string? Password);
