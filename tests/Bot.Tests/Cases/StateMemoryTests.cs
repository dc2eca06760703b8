using DxAssistant.Cases;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class StateMemoryTests
{
    private static readonly CaseMark Mark = new(3, "h", 0);

    [Theory]
    [InlineData(4, "h", 0)]
    [InlineData(3, "other", 0)]
    [InlineData(3, "h", 7)]
    public void TryFind_AnotherMark_IsNotThere(long last, string hash, long blanked)
    {
        var memory = new StateMemory(5);
        memory.Keep("a", Mark, CaseState.New);

        Assert.True(memory.TryFind("a", Mark, out _));
        Assert.False(memory.TryFind("a", new CaseMark(last, hash, blanked), out _));
    }

    [Fact]
    public void Keep_MoreThanThereIsRoomFor_ForgetsTheOneNotUsedLongest()
    {
        var memory = new StateMemory(2);
        memory.Keep("a", Mark, CaseState.New);
        memory.Keep("b", Mark, CaseState.New);
        memory.TryFind("a", Mark, out _);
        memory.Keep("c", Mark, CaseState.New);

        Assert.True(memory.TryFind("a", Mark, out _));
        Assert.False(memory.TryFind("b", Mark, out _));
        Assert.True(memory.TryFind("c", Mark, out _));
    }
}
