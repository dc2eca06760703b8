using System.Collections.Immutable;

namespace DxAssistant.Server.HandOver;

/// <summary>The codes that are valid now. They last ten minutes, let in once, and only as long as the program runs.</summary>
internal sealed class HandOverBook(TimeProvider clock)
{
    /// <summary>How long a code is valid.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromMinutes(10);

    // Of more than two hundred million codes nobody guesses one in so many tries.
    private const int MostTries = 5;
    private const int MostTriesOfAll = 100;

    private readonly Lock gate = new();
    private readonly Dictionary<string, (string Case, DateTimeOffset Until)> codes = new(StringComparer.Ordinal);
    private readonly List<(string Who, DateTimeOffset At)> failures = [];

    /// <summary>A new code of a case; an earlier one of it is no longer valid.</summary>
    public (string Code, DateTimeOffset Until) Draw(string caseId)
    {
        lock (gate)
        {
            Tidy();
            Drop(known => known.Case == caseId);
            string code = CodeWords.Draw();
            while (codes.ContainsKey(code)) code = CodeWords.Draw();
            codes[code] = (caseId, clock.GetUtcNow() + Lasts);
            return (code, codes[code].Until);
        }
    }

    /// <summary>Makes the code of a case no longer valid.</summary>
    public void TakeBack(string caseId)
    {
        lock (gate) Drop(known => known.Case == caseId);
    }

    /// <summary>Uses a code up.</summary>
    /// <returns>The case; null when the code is not valid. Not even a valid one lets in somebody who tried too often.</returns>
    public (string? Case, bool TooMany) Use(string typed, string who)
    {
        lock (gate)
        {
            Tidy();
            if (failures.Count >= MostTriesOfAll || failures.Count(failure => failure.Who == who) >= MostTries) return (null, true);
            if (CodeWords.Read(typed) is { } code && codes.Remove(code, out var found)) return (found.Case, false);
            failures.Add((who, clock.GetUtcNow()));
            return (null, false);
        }
    }

    private void Tidy()
    {
        var now = clock.GetUtcNow();
        failures.RemoveAll(failure => failure.At + Lasts <= now);
        Drop(known => known.Until <= now);
    }

    private void Drop(Func<(string Case, DateTimeOffset Until), bool> which)
    {
        foreach (string code in codes.Where(known => which(known.Value)).Select(known => known.Key).ToImmutableArray()) codes.Remove(code);
    }
}
