using System.Collections.Immutable;

namespace DxAssistant.Cases.Calls;

/// <summary>Calls put aside and what was written down of them. Safe to use from many threads.</summary>
public interface ICallBook : IAsyncDisposable
{
    /// <summary>Puts a call aside, in place of an earlier slip of the same case.</summary>
    /// <exception cref="CaseFileException">It could not be saved.</exception>
    Task PutAsideAsync(CallSlip slip, CancellationToken cancel = default);

    /// <summary>Takes a call up again; its notes stay.</summary>
    Task TakeUpAsync(string caseId, CancellationToken cancel = default);

    /// <summary>The calls put aside: what is due first comes first, what has no time before all others.</summary>
    Task<ImmutableArray<CallSlip>> WaitingAsync(CancellationToken cancel = default);

    Task NoteAsync(string caseId, CallNote note, CancellationToken cancel = default);

    /// <summary>The cases in whose call some words, or a telephone number however it is spaced, were written down; in
    /// ordinal order.</summary>
    Task<ImmutableArray<string>> FindAsync(string about, CancellationToken cancel = default);

    /// <summary>Removes who called, their number and all notes from the call of a case.</summary>
    Task BlankAsync(string caseId, CancellationToken cancel = default);

    /// <summary>Removes the same from all calls put aside, and from all notes written, before a time.</summary>
    Task BlankAsync(DateTimeOffset before, CancellationToken cancel = default);

    /// <summary>The notes of a case, oldest first.</summary>
    Task<ImmutableArray<CallNote>> NotesAsync(string caseId, CancellationToken cancel = default);
}
