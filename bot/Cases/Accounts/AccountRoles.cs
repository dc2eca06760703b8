namespace DxAssistant.Cases.Accounts;

/// <summary>What a person may do with the program. One person may have several.</summary>
[Flags]
public enum AccountRoles
{
    /// <summary>Nothing: such an account cannot sign in.</summary>
    None = 0,

    /// <summary>Opens cases and works on those of their own.</summary>
    Technician = 1,

    /// <summary>Sees and works on all cases, and on claims.</summary>
    Desk = 2,

    /// <summary>Works on the pages of the content.</summary>
    Author = 4,

    /// <summary>Everything, and the accounts.</summary>
    Administrator = 8,
}
