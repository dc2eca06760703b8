namespace DxAssistant.Graph.Testability;

/// <summary>What is to be expected from a position on.</summary>
/// <param name="MendedBy1">P(a verified repair ends the walk, at most so many repairs being tried).</param>
internal readonly record struct Outlook(
    double Checks, double Minutes, double RepairsInVain, double PartsInVain, double HandedOver,
    double MendedBy1, double MendedBy2, double MendedBy3)
{
    public static Outlook operator +(Outlook left, Outlook right) => new(
        left.Checks + right.Checks, left.Minutes + right.Minutes, left.RepairsInVain + right.RepairsInVain,
        left.PartsInVain + right.PartsInVain, left.HandedOver + right.HandedOver, left.MendedBy1
            + right.MendedBy1, left.MendedBy2 + right.MendedBy2,
        left.MendedBy3 + right.MendedBy3);

    public static Outlook operator *(double share, Outlook outlook) => new(
        share * outlook.Checks, share * outlook.Minutes, share * outlook.RepairsInVain,
        share * outlook.PartsInVain, share * outlook.HandedOver,
        share * outlook.MendedBy1, share * outlook.MendedBy2, share * outlook.MendedBy3);

    /// <summary>The same with one more repair in vain before it.</summary>
    public Outlook AfterOneInVain(bool takesPart) => this with
    {
        RepairsInVain = RepairsInVain + 1,
        PartsInVain = PartsInVain + (takesPart ? 1 : 0),
        MendedBy1 = 0,
        MendedBy2 = MendedBy1,
        MendedBy3 = MendedBy2,
    };
}
