using DxAssistant.Server.Workbench.Preview;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Pages that are being written, and what is asked about them.</summary>
/// <param name="Pages">The pages in hand.</param>
/// <param name="Show">The path of the page to show.</param>
/// <param name="Walk">A point of a walk with these pages.</param>
/// <param name="Note">What a proposal is for.</param>
/// <param name="Id">Another id for the page to show.</param>
internal sealed record PagesRequest(PageInHand?[]? Pages, string? Show = null, WalkAsked? Walk = null,
    string? Note = null, string? Id = null);
