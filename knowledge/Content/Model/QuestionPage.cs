using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A short question that tells symptoms apart which people describe alike.</summary>
/// <param name="Answers">Two or more.</param>
/// <param name="Told">
/// What somebody with a symptom answers; a symptom that is not in it may be answered in any way.
/// </param>
public sealed record QuestionPage(string Id, Passage Ask, ImmutableArray<QuestionAnswer> Answers,
    ImmutableArray<ToldBy> Told)
{
    /// <summary>Whether somebody who has a symptom can give an answer.</summary>
    public bool Allows(SymptomId symptom, string answer) =>
        Told.All(told => told.Symptom != symptom) || Told.Any(told => told.Symptom == symptom && told.Answer == answer);
}
