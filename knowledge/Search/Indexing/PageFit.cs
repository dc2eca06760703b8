namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>
/// How well one page fits what was said: the scores of its three closest wordings, 0 where it has fewer, and its plain
/// words.
/// </summary>
internal record struct PageFit
{
    /// <summary>How many wordings of one page count.</summary>
    private const int Crowd = 3;

    private double first, second, third;

    /// <summary>The plain words, as a share of a perfect fit; 0 for all but the best pages.</summary>
    public double Plain { get; set; }

    /// <summary>A wording shares something with what was said.</summary>
    public readonly bool HasClose => first > 0;

    /// <summary>A wording says the same, but for synonyms and small words.</summary>
    public readonly bool IsSame => first >= 1;

    /// <summary>The score of the closest wording, drawn a little towards the mean of the three; 0 to 1.</summary>
    public readonly double Closest =>
        ((1 - Weights.Crowd) * first) + (Weights.Crowd * (first + second + third) / Crowd);

    /// <summary>Takes the score of one more wording.</summary>
    public void Offer(double score)
    {
        if (score <= third)
            return;
        if (score > first)
            (first, second, third) = (score, first, second);
        else if (score > second)
            (second, third) = (score, second);
        else
            third = score;
    }
}
