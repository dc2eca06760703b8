namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>What is wrong with a token.</summary>
public enum Twist
{
    None,
    Signature,
    NoSignature,
    Nonce,
    Audience,
    Issuer,
    Time,

    /// <summary>There is none: the code is not taken.</summary>
    Code,
}
