using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Turns the readings of one kind of check into a verdict.</summary>
public interface IJudge
{
    /// <summary>As a check page names it.</summary>
    string Name { get; }

    /// <summary>The readings it wants, in order; the longest list when it accepts several lengths.</summary>
    ImmutableArray<ReadingNeed> Readings { get; }

    /// <summary>How many readings it accepts, rising.</summary>
    ImmutableArray<int> Counts { get; }

    ImmutableArray<InputNeed> Inputs { get; }

    /// <summary>The verdicts a page may give outcomes for; too close to call and impossible can always come besides.</summary>
    ImmutableArray<VerdictKind> Verdicts { get; }

    /// <summary>Judges readings.</summary>
    /// <exception cref="ArgumentException">
    /// A required input is missing or of another form, an input is unknown, or there are too few or too many readings.
    /// What the technician read never throws.
    /// </exception>
    Judgement Judge(JudgeRequest request);
}
