using System.Buffers;
using System.Numerics;

namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// Positions met by a search, each once: weights that sum to 1, useful checks left, state, bounds on the minutes to
/// go.
/// </summary>
/// <remarks>
/// Its arrays are some megabytes in a large problem: they are borrowed, and may be given back. Whoever does not
/// leaves them to the collector.
/// </remarks>
internal sealed class PositionPool
{
    // Weights that differ by less than this share of themselves are taken for the same; the last bits are noise of
    // the way taken (sixteen of fifty-two bits).
    private const int NoiseBits = 16;

    private readonly int faults;
    private readonly int words;
    private int room;
    private double[] weights;
    private ulong[] useful;
    private int[] states;
    private int[] nextInBucket;
    private int[] buckets;
    private int bucketCount;
    private ulong[] hashes;

    public PositionPool(int faults, int checks, int room = 256)
    {
        (this.faults, words) = (faults, Math.Max(1, (checks + 63) / 64));
        this.room = room;
        (weights, useful) = (Borrowed<double>(room * faults), Borrowed<ulong>(room * words));
        (states, nextInBucket, hashes) = (Borrowed<int>(room), Borrowed<int>(room), Borrowed<ulong>(room));
        (Lower, Upper, FirstAction, ActionCount) =
            (Borrowed<double>(room), Borrowed<double>(room), Borrowed<int>(room), Borrowed<int>(room));
        buckets = NewBuckets();
    }

    public int Count { get; private set; }

    /// <summary>No plan from the position has fewer expected minutes.</summary>
    public double[] Lower { get; private set; }

    /// <summary>A plan with these expected minutes is known.</summary>
    public double[] Upper { get; private set; }

    /// <summary>−1 until the position is expanded.</summary>
    public int[] FirstAction { get; private set; }
    public int[] ActionCount { get; private set; }

    /// <summary>Words of 64 checks each that <see cref="Useful"/> takes.</summary>
    public int Words => words;

    public ReadOnlySpan<double> Weights(int position) => weights.AsSpan(position * faults, faults);

    /// <summary>One bit for each check that is unused and tells live faults apart.</summary>
    public ReadOnlySpan<ulong> Useful(int position) => useful.AsSpan(position * words, words);
    public int State(int position) => states[position];

    /// <summary>Finds the position or adds it.</summary>
    /// <returns>True when it is new; its bounds are then still to be set.</returns>
    public bool Add(ReadOnlySpan<double> normalised, ReadOnlySpan<ulong> usefulChecks, int state, out int position)
    {
        ulong hash = Hash(normalised, usefulChecks, state);
        int bucket = (int)(hash & (ulong)(bucketCount - 1));
        for (position = buckets[bucket]; position >= 0; position = nextInBucket[position])
            if (hashes[position] == hash && IsAt(position, normalised, usefulChecks, state)) return false;
        position = Append(normalised, usefulChecks, state, hash);
        return true;
    }

    private int Append(ReadOnlySpan<double> normalised, ReadOnlySpan<ulong> usefulChecks, int state, ulong hash)
    {
        if (Count == room) Grow();
        int position = Count++;
        normalised.CopyTo(weights.AsSpan(position * faults));
        usefulChecks.CopyTo(useful.AsSpan(position * words));
        (states[position], hashes[position], FirstAction[position]) = (state, hash, -1);
        Enter(position);
        return position;
    }

    private void Enter(int position)
    {
        int bucket = (int)(hashes[position] & (ulong)(bucketCount - 1));
        nextInBucket[position] = buckets[bucket];
        buckets[bucket] = position;
    }

    private bool IsAt(int position, ReadOnlySpan<double> normalised, ReadOnlySpan<ulong> usefulChecks, int state)
    {
        if (states[position] != state || !Useful(position).SequenceEqual(usefulChecks)) return false;
        ReadOnlySpan<double> known = Weights(position);
        for (int fault = 0; fault < known.Length; fault++)
            if (Rounded(known[fault]) != Rounded(normalised[fault])) return false;
        return true;
    }

    private static ulong Hash(ReadOnlySpan<double> normalised, ReadOnlySpan<ulong> usefulChecks, int state)
    {
        const ulong odd = 0x9E37_79B9_7F4A_7C15;
        ulong hash = ((ulong)state + 1) * odd;
        foreach (ulong word in usefulChecks) hash = (BitOperations.RotateLeft(hash, 23) ^ word) * odd;
        foreach (double weight in normalised) hash = (BitOperations.RotateLeft(hash, 23) ^ Rounded(weight)) * odd;
        return hash ^ (hash >> 29);
    }

    private static ulong Rounded(double weight) =>
        (BitConverter.DoubleToUInt64Bits(weight) + (1UL << (NoiseBits - 1))) >> NoiseBits;

    private void Grow()
    {
        room *= 2;
        (weights, useful) =
            (Longer(weights, Count * faults, room * faults), Longer(useful, Count * words, room * words));
        (states, nextInBucket, hashes) =
            (Longer(states, Count, room), Longer(nextInBucket, Count, room), Longer(hashes, Count, room));
        (Lower, Upper) = (Longer(Lower, Count, room), Longer(Upper, Count, room));
        (FirstAction, ActionCount) = (Longer(FirstAction, Count, room), Longer(ActionCount, Count, room));
        GiveBack(buckets);
        buckets = NewBuckets();
        for (int position = 0; position < Count; position++) Enter(position);
    }

    private int[] NewBuckets()
    {
        bucketCount = room * 2;
        int[] fresh = Borrowed<int>(bucketCount);
        Array.Fill(fresh, -1, 0, bucketCount);
        return fresh;
    }

    /// <summary>Gives back what was borrowed; nothing can be asked afterwards.</summary>
    public void GiveBack()
    {
        foreach (double[] one in new[] { weights, Lower, Upper }) GiveBack(one);
        foreach (ulong[] one in new[] { useful, hashes }) GiveBack(one);
        foreach (int[] one in new[] { states, nextInBucket, buckets, FirstAction, ActionCount }) GiveBack(one);
        (weights, useful, states, nextInBucket, buckets, hashes) = ([], [], [], [], [], []);
        (Lower, Upper, FirstAction, ActionCount) = ([], [], [], []);
    }

    private static T[] Longer<T>(T[] array, int used, int room)
    {
        T[] longer = Borrowed<T>(room);
        Array.Copy(array, longer, used);
        GiveBack(array);
        return longer;
    }

    // What was in it before is still there; every item is written before it is read.
    private static T[] Borrowed<T>(int room) => ArrayPool<T>.Shared.Rent(room);

    private static void GiveBack<T>(T[] array) => ArrayPool<T>.Shared.Return(array);
}
