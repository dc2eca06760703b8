using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the page of a clarifying question.</summary>
internal static class QuestionBuilder
{
    public static QuestionPage Build(PageReader page) => new(
        page.Id, page.Joined("Ask"),
        page.Rows("Answers", (row, section) =>
            new QuestionAnswer(row.Cells[0].Text, page.Passage(row.Cells[1], section))),
        [.. page.Rows("Told by", (row, _) =>
            (Symptom: page.Target(row.Cells[0], PageKind.Symptom), Answer: row.Cells[1].Text))
                .Where(told => told.Symptom is not null)
                .Select(told => new ToldBy(new SymptomId(told.Symptom!.Id), told.Answer))]);
}
