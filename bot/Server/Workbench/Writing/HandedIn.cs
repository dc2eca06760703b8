using System.Collections.Immutable;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>What became of pages that were handed in: kept, or why not.</summary>
internal abstract record HandedIn
{
    private HandedIn() { }

    internal sealed record Kept(Proposal Proposal) : HandedIn;

    internal sealed record Refused(int Status, string Line) : HandedIn
    {
        public IResult Result => Refusal.Because(Status, Line);
    }

    /// <param name="Paths">Pages that changed since they were begun from.</param>
    internal sealed record Overtaken(ImmutableArray<string> Paths) : HandedIn;
}
