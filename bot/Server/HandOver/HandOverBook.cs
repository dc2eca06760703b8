using DxAssistant.Cases.Codes;

namespace DxAssistant.Server.HandOver;

/// <summary>The codes that are valid now. They last ten minutes and let in once.</summary>
internal sealed class HandOverBook(CodeBook codes, TimeProvider clock) : IDisposable
{
    /// <summary>How long a code is valid.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromMinutes(10);

    // Of more than two hundred million codes nobody guesses one in so many tries.
    private const int MostTries = 5;
    private const int MostTriesOfAll = 100;

    // Tries at this server are counted one after the other. Other servers count too, a moment later.
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>A new code of a case; an earlier one of it is no longer valid.</summary>
    public async Task<(string Code, DateTimeOffset Until)> DrawAsync(string caseId, CancellationToken cancel)
    {
        await TidyAsync(cancel);
        var until = clock.GetUtcNow() + Lasts;
        string code = CodeWords.Draw();
        while (!await codes.SetAsync(caseId, code, until, cancel)) code = CodeWords.Draw();
        return (code, until);
    }

    /// <summary>Makes the code of a case no longer valid.</summary>
    public Task TakeBackAsync(string caseId, CancellationToken cancel) => codes.DropAsync(caseId, cancel);

    /// <summary>Uses a code up.</summary>
    /// <returns>
    /// The case; null when the code is not valid. Not even a valid one lets in somebody who tried too often.
    /// </returns>
    public async Task<(string? Case, bool TooMany)> UseAsync(string typed, string who, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            var now = clock.GetUtcNow();
            var failures = await codes.FailuresAsync(now - Lasts, cancel);
            if (failures.Length >= MostTriesOfAll || failures.Count(failed => failed == who) >= MostTries)
                return (null, true);
            if (CodeWords.Read(typed) is { } code && await codes.TakeAsync(code, now, cancel) is { } found)
                return (found, false);
            await codes.FailAsync(who, now, cancel);
            return (null, false);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private Task TidyAsync(CancellationToken cancel)
    {
        var now = clock.GetUtcNow();
        return codes.TidyAsync(now, now - Lasts, cancel);
    }
}
