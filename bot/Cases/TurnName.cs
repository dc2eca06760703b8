using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Cases;

/// <summary>Names of turns, as senders give them.</summary>
public static class TurnName
{
    /// <summary>The longest name taken, in characters.</summary>
    public const int Longest = 64;

    /// <summary>
    /// Whether a sender may call its turn so: 1 to <see cref="Longest"/> characters, none of them broken or unseen, and
    /// not the opening's name, under which a message would be taken for the opening sent again.
    /// </summary>
    public static bool IsFit(string name) =>
        name.Length is > 0 and <= Longest && name != CaseDesk.OpeningTurn
        && !name.Any(char.IsControl) && !name.EnumerateRunes().Contains(Rune.ReplacementChar);

    /// <summary>A name that is fit, always the same one for the same text.</summary>
    public static string Of(string text) =>
        "turn-" + Base64Url.EncodeToString(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
