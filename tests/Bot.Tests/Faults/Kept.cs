using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Postgres;
using DxAssistant.Conversation.Events;
using Npgsql;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// Holds a store to what was promised: each acknowledged turn there once, each turn whole, each log sound.
/// </summary>
internal static class Kept
{
    /// <summary>Holds a place in PostgreSQL to what people were answered, claims included.</summary>
    /// <returns>How many turns are kept.</returns>
    public static async Task<int> CheckAsync(string place, Talkers talkers)
    {
        await using var claims = SqlClaimStore.Open(new NpgsqlConnection(place));
        await CheckAsync(claims, talkers.Claims);
        await using var store = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);
        return await CheckAsync(store, talkers.Acknowledged);
    }

    /// <param name="acknowledged">What was answered.</param>
    /// <returns>How many turns are kept.</returns>
    public static async Task<int> CheckAsync(ICaseStore store, IEnumerable<(string CaseId, string TurnId)> acknowledged)
    {
        int turns = 0;
        var promised = acknowledged.ToLookup(one => one.CaseId, one => one.TurnId, StringComparer.Ordinal);
        var names = (await store.NamesAsync()).ToHashSet(StringComparer.Ordinal);
        Assert.All(promised, one => Assert.Contains(one.Key, names));
        foreach (string name in names)
        {
            // Throws when a hash of the chain does not fit.
            var log = await store.ReadAsync(name);
            var kept = Turns(log);
            turns += kept.Count;
            Assert.Equal(kept.Count, kept.Distinct(StringComparer.Ordinal).Count());
            Assert.All(promised[name], turn => Assert.Contains(turn, kept));
        }

        return turns;
    }

    /// <summary>Holds the claims to the same: each that was answered is there, and nobody altered one.</summary>
    public static async Task CheckAsync(IClaimStore claims, IEnumerable<string> acknowledged)
    {
        string[] names = [.. (await claims.ListAsync(limit: int.MaxValue)).Select(head => head.Id)];
        Assert.All(acknowledged, one => Assert.Contains(one, names));
        foreach (string name in names) Assert.Null(ClaimChain.FirstAltered(name, await claims.ReadAsync(name)));
    }

    // Whole turns by name, in order: each begins with what was said and ends with the reply to it.
    private static List<string> Turns(IReadOnlyList<StoredEvent> log)
    {
        var turns = new List<string>();
        for (int i = 0; i < log.Count; i++)
        {
            Assert.Equal(i + 1, log[i].Sequence);
            bool isFirst = i == 0 || log[i - 1].TurnId != log[i].TurnId, isLast = i == log.Count - 1
                || log[i + 1].TurnId != log[i].TurnId;
            if (isFirst) turns.Add(log[i].TurnId);
            if (isLast) Assert.IsType<Replied>(log[i].Event);
        }

        return turns;
    }
}
