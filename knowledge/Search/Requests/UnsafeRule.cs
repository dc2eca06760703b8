using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>One kind of dangerous request: an act, and what it is done to.</summary>
/// <param name="Page">The refusal page it leads to.</param>
/// <param name="Act">What is to be done.</param>
/// <param name="Object">What it is done to; null: the act says it all.</param>
internal sealed record UnsafeRule(string Page, WordPattern Act, WordPattern? Object)
{
    /// <summary>How many words may stand between act and object.</summary>
    public int Reach { get; init; } = 5;

    /// <summary>The object must come after the act.</summary>
    public bool ObjectFollows { get; init; }

    /// <summary>
    /// The words must also say that someone means to do it: "can I …", "how do I …", or the act comes first.
    /// </summary>
    public bool OnlyIfMeant { get; init; }

    /// <summary>
    /// Its words can hardly mean anything else: nothing in the rest of the message speaks against it.
    /// </summary>
    public bool IsOutright { get; init; }

    /// <summary>The message has no more words than this.</summary>
    public int MostWords { get; init; } = int.MaxValue;

    /// <summary>A third thing that must be said, anywhere.</summary>
    public WordPattern? Also { get; init; }

    /// <summary>A fourth, anywhere too.</summary>
    public WordPattern? And { get; init; }

    /// <summary>Wordings that hold the act's words and mean something harmless.</summary>
    public WordPattern? Unless { get; init; }

    public bool Fits(RequestWords request) =>
        request.Count <= MostWords && Act.In(request).Any(act => Fits(request, act))
            && (Also is null || Also.IsIn(request)) && (And is null || And.IsIn(request))
            && (Unless is null || !Unless.IsIn(request));

    private bool Fits(RequestWords request, (int First, int Last) act) =>
        Object is null
            ? IsMeant(request, act.First)
            : Object.In(request).Any(thing => IsNear(act, thing) && IsMeant(request, Math.Min(act.First, thing.First)));

    private bool IsMeant(RequestWords request, int at) => !OnlyIfMeant || Intent.Shows(request, at);

    private bool IsNear((int First, int Last) act, (int First, int Last) thing) =>
        thing.First > act.Last ? thing.First - act.Last <= Reach : !ObjectFollows && act.First - thing.Last <= Reach;
}
