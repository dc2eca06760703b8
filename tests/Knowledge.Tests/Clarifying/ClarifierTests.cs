using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Tests.Clarifying;

public sealed class ClarifierTests
{
    private static readonly PagePlace Nowhere = new("x.md", "");

    [Fact]
    public void Best_OneWordSettlesIt_IsAskedAndLeadsToEach()
    {
        Clarification found = Assert.IsType<Clarification>(
            new Clarifier([Question("where", "Where?", ["in", "out"], ("a", "in"), ("b", "out"))])
            .Best(Pool(("a", "Noise from the indoor unit", 1), ("b", "Noise from the outdoor unit", 1))));
        Assert.Equal(["in:a", "out:b"], found.Ways.Select(Show));
        // Two alike, told apart for certain: one bit.
        Assert.Equal(1, found.Bits, 6);
    }

    [Fact]
    public void Best_SymptomWithoutAnAnswer_StaysUnderEach()
    {
        Clarification found = Assert.IsType<Clarification>(
            new Clarifier([Question("where", "Where?", ["in", "out"], ("a", "in"), ("b", "out"))])
            .Best(Pool(("a", Long, 5), ("b", Long, 5), ("c", Long, 0.1))));
        Assert.Equal(["in:a,c", "out:b,c"], found.Ways.Select(Show));
    }

    [Fact]
    public void Best_ListIsReadSooner_IsNone() => Assert.Null(
        new Clarifier(
            [Question("where", "Is it the one in the room, or the one that stands outside of the house?", ["in", "out"],
                ("a", "in"), ("b", "out"))])
            .Best(Pool(("a", "Noise", 1), ("b", "Smell", 1))));

    [Fact]
    public void Best_QuestionThatTellsNothingHere_IsNone() => Assert.Null(
        new Clarifier([Question("where", "Where?", ["in", "out"], ("x", "in"), ("y", "out"))])
            .Best(Pool(("a", "A long title of a symptom", 1), ("b", "Another long title of a symptom", 1))));

    [Fact]
    public void Best_OfTwoAsShort_TheOneWithMoreInformation()
    {
        QuestionPage even =
            Question("zeven", "Where?", ["in", "out"], ("a", "in"), ("b", "in"), ("c", "out"), ("d", "out"));
        QuestionPage uneven =
            Question("auneven", "Where?", ["in", "out"], ("a", "in"), ("b", "in"), ("c", "in"), ("d", "out"));
        Clarification found = Assert.IsType<Clarification>(new Clarifier([uneven, even]).Best(Pool(
            ("a", Long, 1), ("b", Long, 1), ("c", Long, 1), ("d", Long, 1))));
        Assert.Equal("zeven", found.Question.Id);
    }

    private static readonly string Long = string.Join(' ', Enumerable.Repeat("word", 20));

    private static string Show(ClarifiedWay way) => $"{way.Answer.Id}:{string.Join(',', way.Left)}";

    private static QuestionPage Question(string id, string ask, string[] answers,
        params (string Symptom, string Answer)[] told) => new(
        id, Said(ask), [.. answers.Select(answer => new QuestionAnswer(answer, Said(answer)))],
        [.. told.Select(row => new ToldBy(new SymptomId(row.Symptom), row.Answer))]);

    private static ImmutableArray<Candidate> Pool(params (string Id, string Title, double Weight)[] symptoms) =>
        [.. symptoms.Select(
            one => new Candidate(new SymptomPage(new SymptomId(one.Id), Said(one.Title), Said(""), []), one.Weight))];

    private static Passage Said(string text) => new(text, Nowhere);
}
