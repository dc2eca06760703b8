namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>How well one page fits what was said.</summary>
/// <param name="Closest">Its closest wording.</param>
/// <param name="Plain">The plain words, as a share of a perfect fit; 0 for all but the best pages.</param>
internal readonly record struct PageFit(ClosestWording Closest, double Plain);
