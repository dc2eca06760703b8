namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>How much each wording shares with what was said, and which wordings share anything at all.</summary>
/// <param name="shares">By wording; all 0 at first.</param>
/// <param name="sharing">Room for every wording and one more.</param>
internal ref struct SharedMeaning(Span<double> shares, Span<int> sharing)
{
    private readonly Span<double> shares = shares;
    private readonly Span<int> sharing = sharing;
    private int count;

    /// <summary>The wordings that share something, each once.</summary>
    public readonly ReadOnlySpan<int> Wordings => sharing[..count];

    public readonly double Of(int wording) => shares[wording];

    /// <param name="share">More than 0.</param>
    public void Add(int wording, double share)
    {
        ref var sum = ref shares[wording];
        // Without a branch, which could not be foreseen.
        sharing[count] = wording;
        count += sum == 0 ? 1 : 0;
        sum += share;
    }
}
