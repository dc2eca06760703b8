using System.Buffers.Binary;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// The files as they lie on the disk at any moment while people talk: opened elsewhere, as after a loss of power.
/// </summary>
/// <remarks>
/// The program is halted while its files are copied, so that the copy is of one moment. What it had flushed is in it;
/// what it had written and not flushed is in it too, and stands for nothing acknowledged: in a second copy the journal
/// ends or goes wrong at a random place, which may only take whole turns from the end.
/// </remarks>
internal static class LostPower
{
    private const int People = 6;
    private const int MostMilliseconds = 300;

    private static readonly string[] Parts = ["", "-wal", "-shm"];

    // A new file and new people after so many copies: each is read whole, so that the time would grow with their
    // square.
    private const int MomentsOfAFile = 50;

    public static async Task<LostPowerFigures> RunAsync(int moments, int seed)
    {
        var figures = new LostPowerFigures(FaultFigures.None, 0);
        var random = new Random(seed);
        for (int done = 0; done < moments; done += MomentsOfAFile)
            figures = figures.And(await RunAsync(Math.Min(MomentsOfAFile, moments - done), seed + done, random));
        return figures;
    }

    private static async Task<LostPowerFigures> RunAsync(int moments, int seed, Random random)
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var server = await ServerProcess.StartAsync("--data", file);
        await using var talkers = Talkers.With(People, seed, () => [server.Address]);
        talkers.Begin(People);
        int whole = 0, torn = 0;
        for (int moment = 0; moment < moments; moment++)
        {
            await talkers.AnsweredAsync(2);
            await Task.Delay(random.Next(MostMilliseconds));
            string copy = folder.File($"copy{moment}.db"), cut = folder.File($"cut{moment}.db");

            // People wait until the copies are read, else there would be ever more to copy.
            await server.WhileHaltedAsync(async () =>
            {
                (string, string)[] acknowledged = [.. talkers.Acknowledged];
                string[] claims = [.. talkers.Claims];
                Copy(file, copy, Parts);
                Copy(copy, cut, Parts[..2]);
                Tear(cut + "-wal", CarriedOver(copy), random);
                whole += await CheckAsync(copy, acknowledged, claims);
                torn += await CheckAsync(cut, [], []);
            });
        }

        await talkers.EndAsync();
        Assert.Empty(talkers.Odd);
        return new LostPowerFigures(FaultFigures.Of(moments, talkers, whole), torn);
    }

    private static void Copy(string from, string to, string[] parts)
    {
        foreach (string part in parts.Where(part => File.Exists(from + part))) File.Copy(from + part, to + part);
    }

    // Cut off, or a few bytes that were never written as they should be.
    private static void Tear(string journal, long from, Random random)
    {
        using var bytes = File.Open(journal, FileMode.Open, FileAccess.ReadWrite);
        long place = from + random.NextInt64(Math.Max(1, bytes.Length - from + 1));
        if (random.Next(2) == 0)
        {
            bytes.SetLength(Math.Min(place, bytes.Length));
            return;
        }

        bytes.Position = place;
        byte[] wrong = new byte[random.Next(1, 600)];
        random.NextBytes(wrong);
        bytes.Write(wrong);
    }

    // What was carried over into the file of cases had been flushed in the journal before.
    // Source: SQLite documentation, WAL-mode File Format: frames of 24 bytes and a page behind 32 bytes of header, the
    // size of a page at byte 8 of it, most significant byte first; in the index the number of frames that were tried to
    // be carried over at byte 128.
    private static long CarriedOver(string file)
    {
        byte[] index = File.ReadAllBytes(file + "-shm"), journal = new byte[12];
        using (var bytes = File.OpenRead(file + "-wal")) bytes.ReadExactly(journal);
        return 32
            + (BitConverter.ToUInt32(index, 128) * (24L + BinaryPrimitives.ReadUInt32BigEndian(journal.AsSpan(8))));
    }

    private static async Task<int> CheckAsync(string file, (string CaseId, string TurnId)[] acknowledged,
        string[] begun)
    {
        int turns;
        await using (var store = SqliteCaseStore.Open(file, TimeProvider.System)) turns =
            await Kept.CheckAsync(store, acknowledged);
        await using (var claims = SqlClaimStore.Open(file)) await Kept.CheckAsync(claims, begun);
        foreach (string part in Parts) File.Delete(file + part);
        return turns;
    }
}
