using System.Collections.Immutable;
using DxAssistant.Knowledge.Search;
using DxAssistant.Server.Commands.Scoring;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class MatchScoreTests
{
    private static readonly MatchSheet Sheet = new(
    [
        (1, Line("pump is seized", "compressor-locked", MatchDecision.Fault, ("compressor-locked", 0.9))),
        (2,
            Line("drain is clear, pan is full", "condensate-pump-failed", MatchDecision.Choices, ("drain-blocked", 0.5),
                ("condensate-pump-failed", 0.4))),
        (3, Line("my fridge", MatchLine.None, MatchDecision.Choices, ("drain-blocked", 0.3))),
        (4, Line("hello", MatchLine.None, MatchDecision.None)),
        (5, Line("bridge the float", MatchLine.Refuse, MatchDecision.Refuse)),
    ]);

    [Fact]
    public void Figures_KnownLines_CountEachKind()
    {
        var figures = Sheet.Figures;
        Assert.Equal((0.5, 1, 0.5, 1), (figures.First, figures.AmongThree, figures.FalseFaults, figures.Refused));
        Assert.Equal(1, figures.RuledOutFirst);
    }

    [Fact]
    public void Text_FiguresOnly_HoldsNoLineOfTheFile()
    {
        Assert.Contains("drain is clear", Sheet.Text(figuresOnly: false), StringComparison.Ordinal);
        Assert.DoesNotContain("drain is clear", Sheet.Text(figuresOnly: true), StringComparison.Ordinal);
        Assert.DoesNotContain("taken for", Sheet.Text(figuresOnly: true), StringComparison.Ordinal);
    }

    [Fact]
    public void Reliability_CertainAnswers_AreCountedApart() =>
        Assert.Equal((1, 1), Reliability.Certain([.. Sheet.Lines.Select(line => line.Line)]));

    private static MatchLine Line(string said, string expected, MatchDecision decision,
        params (string Id, double Score)[] candidates)
    {
        ImmutableArray<MatchCandidate> named =
            [.. candidates.Select(candidate => new MatchCandidate(candidate.Id, candidate.Score))];
        ImmutableArray<string> not = said.StartsWith("drain is clear", StringComparison.Ordinal)
            ? ["drain-blocked"]
            : [];
        return new MatchLine(said, expected, not, new MatchResult(decision, named, [], null, [], []), []);
    }
}
