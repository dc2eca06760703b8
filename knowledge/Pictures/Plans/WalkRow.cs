namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>One way out of a step: an answer and where it leads.</summary>
/// <param name="Answer">
/// What was seen, in the words of the page; answers that lead to the same step stand together.
/// </param>
/// <param name="Share">How likely it is once the step is done; 0 to 1.</param>
/// <param name="Next">The step it leads to; null where the page ends.</param>
/// <param name="Suspect">Where the page ends: what is said instead.</param>
internal sealed record WalkRow(string Answer, double Share, WalkStep? Next, string Suspect)
{
    /// <summary>True when the next step stands right below.</summary>
    public bool IsDown { get; init; }

    /// <summary>Where the way runs down between two columns, counted from the right.</summary>
    public int Lane { get; set; }
}
