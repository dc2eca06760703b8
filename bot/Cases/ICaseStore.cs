using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases;

/// <summary>The append-only event logs of all cases. Safe to use from many threads.</summary>
public interface ICaseStore : IWorkList, IAsyncDisposable
{
    /// <summary>Word of what other programs on the same cases append; null where they cannot tell.</summary>
    ICaseNews? News => null;

    /// <summary>Appends all events of one turn, or none. When it returns <see cref="AppendResult.Appended"/> they are
    /// on disk.</summary>
    /// <param name="expectedSequence">The last sequence number the turn was made from; 0 for a case that does not exist
    /// yet.</param>
    /// <param name="turnId">Unique within the case: a turn that is already there is not appended again.</param>
    /// <exception cref="ArgumentException">An id is empty, or there is no event.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="expectedSequence"/> is below 0.</exception>
    /// <exception cref="CaseFileException">The turn could not be saved.</exception>
    Task<AppendResult> AppendAsync(
        string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events,
        CancellationToken cancel = default);

    /// <summary>All events of one case in order, with their chain of hashes checked; empty when there is no such
    /// case.</summary>
    /// <exception cref="CaseFileException">The case cannot be read, or was altered outside this
    /// program.</exception>
    Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default);

    /// <summary>The cases last added to, newest first; those in which nothing was said yet are left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The limit is below 1.</exception>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<CasePage> PageAsync(CaseQuery query, CancellationToken cancel = default);

    /// <summary>One case as it is kept, not checked.</summary>
    /// <exception cref="CaseFileException">The case cannot be read.</exception>
    Task<KeptLog> ReadRowsAsync(string caseId, CancellationToken cancel = default);

    /// <summary>What shows whether a case is still as it was. Costs little, however long the log is.</summary>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<CaseMark> MarkAsync(string caseId, CancellationToken cancel = default);

    /// <summary>The last sequence number of a case, not checked; 0 when there is no such case. Costs little, however
    /// long the log is.</summary>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<long> LastAsync(string caseId, CancellationToken cancel = default);

    /// <summary>
    /// The names of all cases, in ordinal order; also of those whose entries somebody took away behind the program.
    /// </summary>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<ImmutableArray<string>> NamesAsync(CancellationToken cancel = default);

    /// <summary>Takes a whole case over from elsewhere, row for row.</summary>
    /// <returns>False, and nothing is changed, when a case of this name is here already.</returns>
    /// <exception cref="CaseFileException">The rows are not a sound log of this case, or could not be
    /// saved.</exception>
    Task<bool> TakeOverAsync(string caseId, ImmutableArray<LogRow> rows, CancellationToken cancel = default);

    /// <summary>The cases in whose log a serial number was ever written down, in ordinal order.</summary>
    /// <param name="serial">Blanks, dashes and small letters make no difference.</param>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<ImmutableArray<string>> WithSerialAsync(string serial, CancellationToken cancel = default);

    /// <summary>Keeps the bytes of a photo under their hash; kept again, nothing changes.</summary>
    /// <exception cref="CaseFileException">They could not be saved.</exception>
    Task KeepPhotoAsync(string caseId, string hash, byte[] bytes, CancellationToken cancel = default);

    /// <summary>The bytes of a photo, not checked; null when they are not there, or were removed.</summary>
    /// <exception cref="CaseFileException">They cannot be read.</exception>
    Task<byte[]?> PhotoAsync(string caseId, string hash, CancellationToken cancel = default);

    /// <summary>Removes the bytes of a photo for good.</summary>
    /// <exception cref="CaseFileException">They could not be removed.</exception>
    Task DropPhotoAsync(string caseId, string hash, CancellationToken cancel = default);

    /// <summary>
    /// Cases that nothing was added to since a time, and whose words were not removed since; longest ago first.
    /// </summary>
    /// <param name="limit">How many at most; 1 or more.</param>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    Task<ImmutableArray<string>> LeftAloneAsync(DateTimeOffset before, int limit, CancellationToken cancel = default);

    /// <summary>
    /// Removes people's own words from a case for good: what they said, typed and were called; and the bytes of
    /// all photos. Readings, results and the chain of hashes stay.
    /// </summary>
    /// <returns>How many entries lost words; 0 also when there is no such case.</returns>
    /// <exception cref="CaseFileException">The words could not be removed.</exception>
    Task<int> BlankAsync(string caseId, CancellationToken cancel = default);
}
