using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>
/// For each feature how much it speaks for each page: the weights of a multinomial logistic regression.
/// </summary>
/// <remarks>
/// Learnt by stochastic gradient descent (Robbins and Monro, A stochastic approximation method, 1951) in a fixed order
/// with a fixed number of passes, in plain additions and multiplications: the same wordings give the same weights.
/// </remarks>
internal sealed class LearntWeights
{
    private const int Passes = 5;
    private const float FirstStep = 4;
    private const float StepDecay = 0.15f;
    /// <summary>An error smaller than this teaches nothing worth its time.</summary>
    private const float LeastError = 0.0005f;

    private const float Shrinking = 1e-5f;

    /// <summary>How many wordings are learnt from in one step.</summary>
    private const int Step = 500;

    /// <summary>Learning is over before the runtime would find it worth compiling well.</summary>
    private const MethodImplOptions Hot = MethodImplOptions.AggressiveOptimization;

    private static readonly int Lanes = Vector<float>.Count;
    private readonly int pages;
    private readonly float[][] weights;

    private readonly ImmutableArray<(int Page, (int Feature, float Share)[] Features)> wordings;

    /// <param name="wordings">
    /// The features of each wording with their shares, and the page it belongs to, in the order of learning.
    /// </param>
    public LearntWeights(ImmutableArray<(int Page, (int Feature, float Share)[] Features)> wordings, int features,
        int pages)
    {
        (this.wordings, this.pages) = (wordings, pages);
        weights = new float[features][];
        foreach (var feature in wordings.SelectMany(wording => wording.Features).Select(feature => feature.Feature))
            weights[feature] ??= new float[Width];
    }

    private int Width => (pages + Lanes - 1) / Lanes * Lanes;

    /// <summary>Learns, some wordings with each step.</summary>
    /// <returns>How many wordings were learnt from so far.</returns>
    public IEnumerable<int> Learn()
    {
        var error = new float[Width];
        for (var learnt = 0; learnt < Passes * wordings.Length; learnt++)
        {
            var (pass, at) = Math.DivRem(learnt, wordings.Length);
            Learn(wordings[at], FirstStep / (1 + (pass * StepDecay)), error);
            if (learnt % Step == 0)
                yield return learnt;
        }
    }

    /// <summary>The probability of each page.</summary>
    public float[] Judge((int Feature, float Share)[] said)
    {
        var scores = new float[Width];
        foreach (var (feature, share) in said)
            Add(scores, weights[feature], share);
        ToProbabilities(scores);
        return scores[..pages];
    }

    [MethodImpl(Hot)]
    private void Learn((int Page, (int Feature, float Share)[] Features) wording, float step, float[] error)
    {
        Array.Clear(error);
        foreach (var (feature, share) in wording.Features)
            Add(error, weights[feature], share);
        ToProbabilities(error);
        error[wording.Page] -= 1;
        for (var at = 0; at < error.Length; at += Lanes)
        {
            var wrong = new Vector<float>(error, at);
            Vector.ConditionalSelect(Vector.LessThan(Vector.Abs(wrong), new Vector<float>(LeastError)),
                Vector<float>.Zero, wrong).CopyTo(error, at);
        }
        foreach (var (feature, share) in wording.Features)
            Move(weights[feature], error, -step * share, 1 - (step * Shrinking));
    }

    [MethodImpl(Hot)]
    private static void Add(float[] sum, float[] what, float times)
    {
        for (var at = 0; at < sum.Length; at += Lanes)
            (new Vector<float>(sum, at) + (new Vector<float>(what, at) * times)).CopyTo(sum, at);
    }

    [MethodImpl(Hot)]
    private static void Move(float[] row, float[] error, float times, float shrunk)
    {
        for (var at = 0; at < row.Length; at += Lanes)
            ((new Vector<float>(row, at) * shrunk) + (new Vector<float>(error, at) * times)).CopyTo(row, at);
    }

    [MethodImpl(Hot)]
    private void ToProbabilities(float[] scores)
    {
        var most = float.MinValue;
        for (var page = 0; page < pages; page++)
            most = Math.Max(most, scores[page]);
        for (var at = 0; at < scores.Length; at += Lanes)
            Exponential.Of(new Vector<float>(scores, at) - new Vector<float>(most)).CopyTo(scores, at);
        // One after the other: the sum must not depend on how wide the machine's vectors are.
        float all = 0;
        for (var page = 0; page < pages; page++)
            all += scores[page];
        for (var at = 0; at < scores.Length; at += Lanes)
            (new Vector<float>(scores, at) / all).CopyTo(scores, at);
        Array.Clear(scores, pages, scores.Length - pages);
    }
}
