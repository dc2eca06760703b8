using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;
using static DxAssistant.Knowledge.Content.Languages.TranslatedPart;

namespace DxAssistant.Knowledge.Content.Languages;

/// <summary>
/// What of each kind of page can be said in another language. Numbers, links and likelihoods cannot: they stand
/// on the main page alone, so that they never differ.
/// </summary>
internal static class TranslatedParts
{
    /// <summary>The parts of a kind, or null when the kind has no words that people are shown.</summary>
    public static ImmutableArray<TranslatedPart>? Of(PageKind kind) => kind switch
    {
        PageKind.Roles => [Table("Roles", ["Role"], "Name", "May do", TranslatedPart.SaidAs)],
        PageKind.Access => [Table("Steps", [], "Do", "Reading")],
        PageKind.Caution => [Words("Danger"), List("Do")],
        PageKind.Series => [Words(TranslatedPart.SaidAs), Table("Codes", ["Display", "Look"], "Means")],
        PageKind.Symptom => [Words(TranslatedPart.SaidAs)],
        PageKind.Fault =>
            [Words(TranslatedPart.SaidAs), Words("Seen"), Words("Measured"), Words("Proof"), List("Beware"),
                Words("Warranty")],
        PageKind.Check =>
            [Words("Ask"), List("How"), Table("Readings", ["Reading"], ShownAs, "Where"),
                Table("Outcomes", ["Outcome"], "Answer", TranslatedPart.SaidAs), Words(TranslatedPart.SaidAs)],
        PageKind.Repair => [List("Steps"), Words("Verify"), Words(TranslatedPart.SaidAs)],
        PageKind.Refusal =>
            [Words(TranslatedPart.SaidAs), Words("Sounds alike"), Words("Answer"), Words("Safe way"),
                Words("Owner's way")],
        PageKind.Question => [Words("Ask"), Table("Answers", ["Answer"], "Shown")],
        PageKind.Term => [Words(TranslatedPart.SaidAs), Words("Meaning")],
        PageKind.Phrases or PageKind.Glossary => [],
        _ => null,
    };

    /// <summary>True for pages whose sections are all free: phrases and glossary.</summary>
    public static bool IsFree(PageKind kind) => kind is PageKind.Phrases or PageKind.Glossary;
}
