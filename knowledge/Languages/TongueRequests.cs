using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Languages;

/// <summary>Requests that get a fixed answer: a clause that holds every term of one of their wordings.</summary>
internal sealed class TongueRequests(TongueTerms terms, IEnumerable<(string Page, IEnumerable<string> Wordings)> pages)
{
    private readonly ImmutableArray<(string Page, ImmutableArray<string> Terms)> wordings =
    [
        .. pages.SelectMany(page => page.Wordings.Select(wording =>
                (page.Page, Terms: terms.ByClause(wording).SelectMany(clause => clause).Distinct().ToImmutableArray())))
            .Where(wording => !wording.Terms.IsEmpty).OrderByDescending(wording => wording.Terms.Length),
    ];

    /// <summary>The page of the answer, or null.</summary>
    public string? Find(string text)
    {
        foreach (ImmutableArray<string> said in terms.ByClause(text))
        {
            foreach ((string page, ImmutableArray<string> wanted) in wordings)
            {
                if (wanted.All(term => said.Contains(term))) return page;
            }
        }

        return null;
    }
}
