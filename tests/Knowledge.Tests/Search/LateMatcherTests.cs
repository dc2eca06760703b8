using DxAssistant.Knowledge.Search;

namespace DxAssistant.Knowledge.Tests.Search;

public class LateMatcherTests
{
    private const string Words = "drain is clear but water runs down the wall";

    [Fact]
    public void Match_NotBegun_MakesItAndMatchesAsTheOther()
    {
        var late = new LateMatcher(Matcher.Steps(ShippedMatcher.Library));
        Assert.Equal(ShippedMatcher.Match(Words).Candidates.AsEnumerable(), late.Match(Words).Candidates);
        Assert.False(late.GoOn());
    }

    [Fact]
    public void Match_WhileItIsBeingMade_FinishesIt()
    {
        int steps = 0;
        var late = new LateMatcher(Counted());
        Assert.True(late.GoOn());
        Assert.True(late.GoOn());
        Assert.Equal(MatchDecision.None, late.Match(Words).Decision);
        Assert.Equal(4, steps);

        IEnumerable<IMatcher?> Counted()
        {
            for (; steps < 3; steps++) yield return null;
            steps++;
            yield return new Deaf();
        }
    }

    // Small steps are the point: each is the longest that an answer on a phone waits for.
    [Fact]
    public void Steps_OfShippedPages_AreManyAndGiveOneMatcher()
    {
        Matcher?[] steps = [.. SearchSteps()];
        Assert.True(steps.Length > 150, $"{steps.Length} steps");
        Assert.NotNull(steps[^1]);
        Assert.All(steps[..^1], Assert.Null);
    }

    // One wording more, or the index made last would be taken.
    private static IEnumerable<Matcher?> SearchSteps() => Matcher.Steps(ShippedMatcher.Library with
    {
        Glossary = [.. ShippedMatcher.Library.Glossary.Skip(1)],
    });

    private sealed class Deaf : IMatcher
    {
        public MatchResult Match(string text, string? seriesId = null) => new(MatchDecision.None, [], [], null, [], []);
    }
}
