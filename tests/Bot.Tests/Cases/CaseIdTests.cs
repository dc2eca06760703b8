using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class CaseIdTests
{
    [Fact]
    public void New_ManyTimes_IsWellFormedAndNeverTheSame()
    {
        var names = Enumerable.Range(0, 1000).Select(_ => CaseId.New()).ToList();

        Assert.All(names, name => Assert.True(CaseId.IsWellFormed(name)));
        Assert.Equal(1000, names.Distinct().Count());
    }

    [Fact]
    public void Of_Conversation_IsItsOwnAndAlwaysTheSame()
    {
        Assert.Equal(CaseId.Of("emulator", "c1"), CaseId.Of("emulator", "c1"));
        Assert.NotEqual(CaseId.Of("emulator", "c1"), CaseId.Of("other", "c1"));
        Assert.True(CaseId.IsWellFormed(CaseId.Of("emulator", "any/thing: at all")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("a b")]
    [InlineData("../etc")]
    [InlineData("é")]
    [InlineData("12345678901234567890123456789012345678901234567890123456789012345")]
    public void IsWellFormed_AnythingElse_IsNot(string text) => Assert.False(CaseId.IsWellFormed(text));
}
