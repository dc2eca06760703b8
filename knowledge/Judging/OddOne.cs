using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;

namespace DxAssistant.Knowledge.Judging;

/// <summary>The one of several readings that is furthest from their mean.</summary>
/// <param name="Index">Its position; the first of equals.</param>
/// <param name="Share">Its deviation as a share of the mean, 0 or more.</param>
internal sealed record OddOne(int Index, double Mean, double Share, ImmutableArray<double> Values)
{
    /// <summary>Finds it.</summary>
    /// <param name="values">With a mean above 0.</param>
    public static OddOne Of(ImmutableArray<double> values)
    {
        var mean = values.Average();
        // Rounded, so that equal deviations do not swap places by their last bit.
        var deviations = values.Select(value => Quantities.NumberText.Round(Math.Abs(value - mean) / mean)).ToArray();
        var index = Array.IndexOf(deviations, deviations.Max());
        return new OddOne(index, mean, Math.Abs(values[index] - mean) / mean, values);
    }

    /// <summary>Standard uncertainty of the counts part of a meter alone, SI base.</summary>
    public static double CountsOf(MeterClass meter) => meter.StandardUncertainty(0);

    /// <summary>Standard uncertainty of <see cref="Share"/> when each reading has one, independent of the
    /// others.</summary>
    /// <param name="each">SI base.</param>
    /// <remarks>share = |n x / sum - 1|: slope (n/sum)(1 - x/sum) to the odd one, -(n/sum)(x/sum) to each other. GUM
    /// 5.1.2.</remarks>
    public double ShareUncertainty(double each)
    {
        var (n, sum) = (Values.Length, Mean * Values.Length);
        var part = Values[Index] / sum;
        return n / sum * each * Math.Sqrt((1 - part) * (1 - part) + (n - 1) * part * part);
    }
}
