using DxAssistant.Server.Workbench.Writing;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class ThreeTextsTests
{
    [Theory]
    [InlineData("a\nb\nc\nd\ne\n", "A\nb\nc\nd\ne\n", "a\nb\nc\nd\nE\n", "A\nb\nc\nd\nE\n")]
    [InlineData("a\nb\nc\n", "a\nb\nc\nd\n", "x\na\nb\nc\n", "x\na\nb\nc\nd\n")]
    [InlineData("a\nb\nc\n", "a\nc\n", "a\nb\nc\n", "a\nc\n")]
    [InlineData("a\nb\nc\n", "a\nB\nc\n", "a\nB\nc\n", "a\nB\nc\n")]
    public void Merge_ChangesOfDifferentLines_KeepsBoth(string before, string mine, string theirs, string both) =>
        Assert.Equal(both, ThreeTexts.Merge(before, mine, theirs));

    [Theory]
    [InlineData("a\nb\nc\n", "a\nX\nc\n", "a\nY\nc\n")]
    [InlineData("a\nb\nc\n", "a\nc\n", "a\nY\nc\n")]
    [InlineData("a\n", "a\nx\n", "a\ny\n")]
    [InlineData("a\nb\nc\n", "X\nb\nc\n", "a\nY\nc\n")]
    [InlineData("", "x\n", "y\n")]
    public void Merge_ChangesOfTheSameLines_IsLeftToAPerson(string before, string mine, string theirs) =>
        Assert.Null(ThreeTexts.Merge(before, mine, theirs));
}
