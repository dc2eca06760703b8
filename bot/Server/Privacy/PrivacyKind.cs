namespace DxAssistant.Server.Privacy;

/// <summary>One kind of thing that is kept about people.</summary>
internal sealed record PrivacyKind(string What, string Why, string HowLong);
