namespace DxAssistant.Server.Desk;

/// <summary>Where changes of claims are told.</summary>
/// <param name="Secret">What the news is signed with; known to both sides alone.</param>
internal sealed record NewsSettings(Uri Address, string Secret)
{
    /// <summary>The variable that holds the secret: on a command line others could read it.</summary>
    public const string SecretVariable = "DXASSISTANT_NEWS_SECRET";
}
