namespace DxAssistant.Server.Content;

/// <summary>The pages that answer now.</summary>
/// <param name="Version">Changes with every change of a page.</param>
internal sealed record ContentView(string Version, int Pages, int Pictures);
