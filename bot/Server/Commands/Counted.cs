using System.Globalization;

namespace DxAssistant.Server.Commands;

/// <summary>How many of something, in words that fit the number.</summary>
internal static class Counted
{
    /// <param name="one">The word for one of them, which takes an s for more.</param>
    public static string Of(int count, string one) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? "" : "s")}");
}
