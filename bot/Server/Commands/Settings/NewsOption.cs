using System.CommandLine;
using DxAssistant.Server.Desk;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands.Settings;

/// <summary>The option that says where changes of claims are told.</summary>
internal sealed class NewsOption
{
    private const int ShortestSecret = 16;

    private readonly Option<string?> news = new("--claim-news")
    {
        Description = $"Where changes of claims are posted, signed with the secret in {NewsSettings.SecretVariable}.",
        HelpName = "URL",
    };

    public void AddTo(Command command) => command.Add(news);

    /// <returns>What is wrong with the call; null when nothing is.</returns>
    public string? Read(ParseResult call, ref ServerSettings settings)
    {
        if (call.GetValue(news) is not { } address) return null;
        if (!Uri.TryCreate(address, UriKind.Absolute, out var url) || url.Scheme is not ("http" or "https"))
            return $"{address} is not an address for news of claims: give it as https://host/path";
        if (Environment.GetEnvironmentVariable(NewsSettings.SecretVariable) is not { Length: >= ShortestSecret } secret)
            return $"news of claims has to be signed: put a secret of {ShortestSecret} characters or more into {NewsSettings.SecretVariable}";
        settings = settings with { News = new NewsSettings(url, secret) };
        return null;
    }
}
