namespace DxAssistant.Cases.Accounts;

/// <summary>What the token of another program may do.</summary>
[Flags]
public enum TokenScopes
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Read cases.</summary>
    ReadCases = 1,

    /// <summary>Open cases and take turns.</summary>
    WriteCases = 2,

    /// <summary>Read claims.</summary>
    ReadClaims = 4,

    /// <summary>Make claims and change their state.</summary>
    WriteClaims = 8,

    /// <summary>Read the pages of the content.</summary>
    ReadContent = 16,

    /// <summary>Send messages of an outside channel.</summary>
    Channel = 32,
}
