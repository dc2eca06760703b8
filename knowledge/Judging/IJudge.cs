using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings;

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

    /// <summary>The verdicts a page may give outcomes for; too close to call and impossible can always come
    /// besides.</summary>
    ImmutableArray<VerdictKind> Verdicts { get; }

    /// <summary>What is wrong with inputs: a name, a form, a kind, a low above its high. Null when nothing
    /// is.</summary>
    string? ProblemWith(ImmutableSortedDictionary<string, JudgeInput> inputs);

    /// <summary>Judges readings.</summary>
    /// <exception cref="ArgumentException">
    /// The inputs have a problem (see <see cref="ProblemWith"/>), or there are too few or too many readings.
    /// What the technician read never throws.
    /// </exception>
    Judgement Judge(JudgeRequest request);

    /// <summary>
    /// What one reading says whatever the others are: an open sensor is open at any temperature. Null when the others
    /// matter.
    /// </summary>
    /// <param name="index">Its place among the readings.</param>
    /// <exception cref="ArgumentException">The inputs have a problem, or there is no such place.</exception>
    Judgement? JudgeAlone(int index, Reading reading, ImmutableSortedDictionary<string, JudgeInput> inputs);
}
