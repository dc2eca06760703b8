using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Warranty;

/// <summary>One reason of a decision, and the page it stands on.</summary>
/// <param name="On">The words of the page that say so.</param>
/// <param name="Months">The months that count; null where none do.</param>
/// <param name="Until">The first day that is no longer covered; null where none is reckoned.</param>
public sealed record CoverageReason(CoverageReasonKind Kind, Passage On, int? Months = null, DateOnly? Until = null);
