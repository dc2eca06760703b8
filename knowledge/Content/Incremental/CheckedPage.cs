using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Rules;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>What the rules that go page by page found on one page.</summary>
/// <param name="First">Of the rules that need no sound frame.</param>
/// <param name="Rest">Of the others; they count only when the frame is sound.</param>
/// <param name="Gathered">What the page adds to each of <see cref="Gathering"/>.</param>
internal sealed record CheckedPage(
    Page Page, PageNeeds Needs, ImmutableArray<Diagnostic> First, ImmutableArray<Diagnostic> Rest,
    ImmutableArray<object?> Gathered)
{
    private static readonly ImmutableArray<IContentRule> Early =
        [.. ContentRules.All.Where(rule => !rule.LooksAtAll && !rule.NeedsFrame)];
    private static readonly ImmutableArray<IContentRule> Late =
        [.. ContentRules.All.Where(rule => !rule.LooksAtAll && rule.NeedsFrame)];

    /// <summary>The rules that take something from each page before they conclude.</summary>
    public static readonly ImmutableArray<IGatheringRule> Gathering = [.. ContentRules.All.OfType<IGatheringRule>()];

    public static CheckedPage Of(Page page, Pages pages)
    {
        var needs = new PageNeeds();
        Pages alone = pages.Focus(page, needs);
        return new CheckedPage(
            page, needs, [.. Early.SelectMany(rule => rule.Check(alone))],
            [.. Late.SelectMany(rule => rule.Check(alone))],
            [.. Gathering.Select(rule => rule.Gather(page, alone))]);
    }
}
