using System.Security.Cryptography;
using System.Text;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>All that the choice of a step looks at besides the graph and its pages, as a digest.</summary>
/// <remarks>SHA-256 (FIPS 180-4): nobody finds two cases that share one.</remarks>
public readonly record struct StepKey(UInt128 First, UInt128 Second)
{
    /// <param name="firstIn">The access states one of which must give a result first.</param>
    public static StepKey Of(Belief belief, Situation situation, IEnumerable<AccessId> firstIn)
    {
        using var bytes = new MemoryStream();
        using (var writer = new BinaryWriter(bytes, Encoding.UTF8, leaveOpen: true))
        {
            Write(writer, belief);
            Write(writer, situation);
            Write(writer, firstIn.Select(access => access.Value));
        }

        Span<byte> digest = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(bytes.GetBuffer().AsSpan(0, (int)bytes.Length), digest);
        return new StepKey(
            System.Buffers.Binary.BinaryPrimitives.ReadUInt128LittleEndian(digest),
            System.Buffers.Binary.BinaryPrimitives.ReadUInt128LittleEndian(digest[16..]));
    }

    private static void Write(BinaryWriter writer, Belief belief)
    {
        foreach (RankedFault ranked in belief.Ranked)
        {
            if (ranked.Probability <= CaseProblem.Negligible) continue;
            writer.Write(ranked.Id.Value);
            writer.Write(ranked.Probability);
        }

        writer.Write("");
        Write(writer, belief.Ledger.Select(line => line.Evidence).OfType<Evidence.OutcomeSeen>()
            .Select(seen => seen.Check.Value));
    }

    private static void Write(BinaryWriter writer, Situation situation)
    {
        writer.Write(situation.Who.Id);
        writer.Write(situation.Who.Rank);
        writer.Write(situation.Access.Value);
        writer.Write((int)situation.Objective);
        writer.Write(situation.HandOverMinutes);
        Write(writer, situation.BarredChecks.Select(check => check.Value));
        Write(writer, situation.BarredRepairs.Select(repair => repair.Value));
        Write(writer, situation.RefusedAccess.Select(access => access.Value));
    }

    // What was done in which order makes no difference to what is left to do. Each list ends with an id that nothing
    // has.
    private static void Write(BinaryWriter writer, IEnumerable<string> ids)
    {
        foreach (string id in ids.Order(StringComparer.Ordinal)) writer.Write(id);
        writer.Write("");
    }
}
