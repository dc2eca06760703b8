namespace DxAssistant.Graph.Tests;

/// <summary>How many things are kept, also when two work one out at the same time.</summary>
public sealed class RememberedLimitTests
{
    private readonly List<string> workedOut = [];

    [Fact]
    public void Of_AsManyAsAreKept_ForgetsNone()
    {
        Remembered<string, string> kept = new(most: 2);
        foreach (string key in (string[])["a", "b", "a", "b"]) Of(kept, key);
        Assert.Equal(["a", "b"], workedOut);
    }

    // Worked out by two at once, the first answer stays and takes one place only.
    [Fact]
    public void Of_KeptMeanwhileByAnother_TakesOnePlace()
    {
        Remembered<string, string> kept = new(most: 2);
        Of(kept, "b");
        Assert.Equal("late", kept.Of("a", () => { Of(kept, "a"); return "late"; }));
        Assert.Equal("A", Of(kept, "a"));
        Of(kept, "b");
        Assert.Equal(["b", "a"], workedOut);
    }

    private string? Of(Remembered<string, string> kept, string key) => kept.Of(key, () =>
    {
        workedOut.Add(key);
        return key.ToUpperInvariant();
    });
}
