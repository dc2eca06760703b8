using System.Numerics;

namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// Positions met by a search, each once: weights that sum to 1, useful checks left, state, bounds on the minutes to
/// go.
/// </summary>
internal sealed class PositionPool
{
    // Weights that differ by less than this share of themselves are taken for the same; the last bits are noise of
    // the way taken (sixteen of fifty-two bits).
    private const int NoiseBits = 16;

    private readonly int faults;
    private readonly int words;
    private double[] weights;
    private ulong[] useful;
    private int[] states;
    private int[] nextInBucket;
    private int[] buckets;
    private ulong[] hashes;

    public PositionPool(int faults, int checks, int room = 256)
    {
        (this.faults, words) = (faults, Math.Max(1, (checks + 63) / 64));
        weights = new double[room * faults];
        useful = new ulong[room * words];
        (states, nextInBucket, hashes) = (new int[room], new int[room], new ulong[room]);
        (Lower, Upper, FirstAction, ActionCount) = (new double[room], new double[room], new int[room], new int[room]);
        buckets = NewBuckets(room);
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
        int bucket = (int)(hash & (ulong)(buckets.Length - 1));
        for (position = buckets[bucket]; position >= 0; position = nextInBucket[position])
            if (hashes[position] == hash && IsAt(position, normalised, usefulChecks, state)) return false;
        position = Append(normalised, usefulChecks, state, hash);
        return true;
    }

    private int Append(ReadOnlySpan<double> normalised, ReadOnlySpan<ulong> usefulChecks, int state, ulong hash)
    {
        if (Count == states.Length) Grow();
        int position = Count++;
        normalised.CopyTo(weights.AsSpan(position * faults));
        usefulChecks.CopyTo(useful.AsSpan(position * words));
        (states[position], hashes[position], FirstAction[position]) = (state, hash, -1);
        Enter(position);
        return position;
    }

    private void Enter(int position)
    {
        int bucket = (int)(hashes[position] & (ulong)(buckets.Length - 1));
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
        int room = states.Length * 2;
        Array.Resize(ref weights, room * faults);
        Array.Resize(ref useful, room * words);
        Array.Resize(ref states, room);
        Array.Resize(ref nextInBucket, room);
        Array.Resize(ref hashes, room);
        (Lower, Upper) = (Longer(Lower, room), Longer(Upper, room));
        (FirstAction, ActionCount) = (Longer(FirstAction, room), Longer(ActionCount, room));
        buckets = NewBuckets(room);
        for (int position = 0; position < Count; position++) Enter(position);
    }

    private static T[] Longer<T>(T[] array, int room)
    {
        Array.Resize(ref array, room);
        return array;
    }

    private static int[] NewBuckets(int room)
    {
        int[] fresh = new int[room * 2];
        Array.Fill(fresh, -1);
        return fresh;
    }
}
