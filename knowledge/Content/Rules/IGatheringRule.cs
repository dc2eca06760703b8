using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>
/// A rule about all pages together that first takes from each page by itself what it has to know, and concludes
/// from nothing else: after an edit only that of changed pages is taken anew, and where that is as before, so is the
/// conclusion.
/// </summary>
internal interface IGatheringRule : IContentRule
{
    bool IContentRule.LooksAtAll => true;

    /// <summary>
    /// What one page adds; null when nothing. Other pages may only be looked up. Two that say the same are equal.
    /// </summary>
    object? Gather(Page page, Pages pages);

    /// <summary>All breaches, in any order.</summary>
    /// <param name="gathered">What <see cref="Gather"/> took from the pages, in the order of their paths.</param>
    IEnumerable<Diagnostic> Conclude(IReadOnlyCollection<object> gathered);

    IEnumerable<Diagnostic> IContentRule.Check(Pages pages) =>
        Conclude([.. pages.All.Select(page => Gather(page, pages)).OfType<object>()]);
}
