namespace DxAssistant.Cases;

/// <summary>
/// What shows whether a case is still as it was read: two marks that are equal are of the same log with the same words.
/// </summary>
/// <param name="Last">The last sequence number; 0 when there is no such case.</param>
/// <param name="Hash">The hash of the last entry; empty when there is none.</param>
/// <param name="Blanked">Changes when people's words were removed; 0 while they never were.</param>
public readonly record struct CaseMark(long Last, string Hash, long Blanked)
{
    /// <summary>The mark of a case that is not there.</summary>
    public static CaseMark None { get; } = new(0, "", 0);
}
