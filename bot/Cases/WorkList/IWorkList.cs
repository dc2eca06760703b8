namespace DxAssistant.Cases.WorkList;

/// <summary>Finds cases by what is in their logs. What was appended is found at once.</summary>
public interface IWorkList
{
    /// <summary>
    /// The cases that fit. Those in which nothing was said yet are found by words of their unit, people and notes, and
    /// else left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The limit is below 1.</exception>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<WorkPage> SearchAsync(WorkQuery query, CancellationToken cancel = default);
}
