namespace DxAssistant.Cases.Accounts;

/// <summary>The form of names that people sign in with.</summary>
public static class AccountName
{
    /// <summary>The longest name, in characters.</summary>
    public const int Longest = 64;

    /// <summary>What is said of a name that has another form.</summary>
    public const string Form = "a name has 1 to 64 letters, digits, . - _ or @, and begins with a letter or digit";

    /// <summary>
    /// The name as it is kept: small letters; null when it has another form than <see cref="Form"/> says.
    /// </summary>
    public static string? Read(string? text)
    {
        string name = (text ?? "").Trim().ToLowerInvariant();
        bool fits = name.Length is > 0 and <= Longest && char.IsAsciiLetterOrDigit(name[0])
            && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' or '@');
        return fits ? name : null;
    }
}
