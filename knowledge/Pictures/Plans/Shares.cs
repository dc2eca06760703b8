using System.Globalization;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Shares as people read them.</summary>
internal static class Shares
{
    /// <summary>In whole percent.</summary>
    /// <param name="share">0 to 1.</param>
    public static string Percent(IPictureWords words, double share) => share is > 0 and < 0.01
        ? words.Say("picture-share-under")
        : words.Say("picture-share", ("number", Number((int)Math.Round(Math.Round(share * 100, 6)))));

    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
