using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Jobs;

/// <summary>How much of earlier work on a unit somebody is told who types its serial number.</summary>
/// <remarks>A number can be typed by anybody who stands before a unit, or who makes numbers up. Of a case that is not
/// theirs to see they are told what was repaired and in which month: what keeps a second part from being changed in
/// vain. No day, no case, no name, no place.</remarks>
/// <param name="MaySee">Whether a case may be seen; then all is told.</param>
/// <param name="MayLookUp">Whether cases that may not be seen are looked up at all.</param>
public sealed record EarlierSight(Func<string, bool> MaySee, bool MayLookUp = true)
{
    /// <summary>For whoever sees all cases.</summary>
    public static readonly EarlierSight Whole = new(_ => true);

    /// <summary>What is told of one piece of work; null for nothing.</summary>
    public EarlierWork? Of(EarlierWork work, DateOnly today)
    {
        if (MaySee(work.Case)) return work;
        if (!MayLookUp) return null;
        var month = new DateOnly(work.Done.Year, work.Done.Month, 1);
        return work
            with { Case = EarlierWork.OfAnother, Done = month, Days = Math.Max(0, today.DayNumber - month.DayNumber) };
    }
}
