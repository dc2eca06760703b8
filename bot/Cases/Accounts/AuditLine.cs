namespace DxAssistant.Cases.Accounts;

/// <summary>Who saw or changed what.</summary>
/// <param name="Number">Counts up; later lines have higher numbers.</param>
/// <param name="Who">The account, or the token's name after "token ".</param>
/// <param name="Did">What, in a word or two, such as "signed in" or "saw case".</param>
/// <param name="To">The case, account or token it was done to; empty when to nothing.</param>
public sealed record AuditLine(long Number, DateTimeOffset At, string Who, string Did, string To);
