using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Keeping;

namespace DxAssistant.Bot.Tests.Server.Commands;

public class HiddenLineTests
{
    [Theory]
    [InlineData("blue ladder\r", "blue ladder")]
    [InlineData("blux\be\r", "blue")]
    [InlineData("\b\bx\r", "x")]
    [InlineData("\r", "")]
    [InlineData("cut off", "cut off")]
    public void Keys_are_taken_until_Enter(string pressed, string expected)
    {
        var keys = new Queue<ConsoleKeyInfo>(pressed.Select(Key));

        Assert.Equal(expected, HiddenLine.Read(() => keys.TryDequeue(out var key) ? key : null));
    }

    private static ConsoleKeyInfo Key(char letter) => new(
        letter,
        letter switch { '\r' => ConsoleKey.Enter, '\b' => ConsoleKey.Backspace, _ => ConsoleKey.None },
        false,
        false,
        false);
}
