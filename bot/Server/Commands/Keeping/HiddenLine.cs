using System.Text;

namespace DxAssistant.Server.Commands.Keeping;

/// <summary>A line typed at a terminal that does not appear on it.</summary>
internal static class HiddenLine
{
    /// <summary>Reads keys until Enter; the backspace key takes the last character away.</summary>
    /// <param name="nextKey">The next key pressed, without showing it; nothing when no more will come.</param>
    internal static string Read(Func<ConsoleKeyInfo?> nextKey)
    {
        var typed = new StringBuilder();
        while (nextKey() is { } key && key.Key != ConsoleKey.Enter)
        {
            if (key.Key == ConsoleKey.Backspace) typed.Length = Math.Max(0, typed.Length - 1);
            else if (!char.IsControl(key.KeyChar)) typed.Append(key.KeyChar);
        }

        return typed.ToString();
    }
}
