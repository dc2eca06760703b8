using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>Bayes and the order of checks, by name.</summary>
internal static class EvidenceCalculations
{
    private static readonly CalculationInput Sensitivity = Share("sensitivity");
    private static readonly CalculationInput Specificity = Share("specificity");

    public static ImmutableArray<Calculation> All =>
    [
        new("bayes", "Probability after a check",
            "positive: se p / (se p + (1 - sp)(1 - p)); negative: (1 - se) p / ((1 - se) p + sp (1 - p))",
            Evidence.Bayes,
            [Share("prior"), Sensitivity, Specificity],
            [new("posterior_if_positive", Units.One), new("posterior_if_negative", Units.One)], Bayes),
        new("lik-ratio", "Likelihood ratios of a check", "LR_pos = se / (1 - sp), LR_neg = (1 - se) / sp",
            Evidence.Bayes,
            [Sensitivity, Specificity], [new("LR_pos", Units.One), new("LR_neg", Units.One)], Ratios),
        new("normalize-posterior", "Probabilities of several faults", "posterior = prior likelihood / sum",
            Evidence.Bayes,
            [CalculationInput.Numbers("prior", Units.One, Bounds.NotNegative),
                CalculationInput.Numbers("likelihood", Units.One, new Bounds(0, 1))],
            [new("posterior", Units.One)], Posterior),
        new("pc-order", "Order of perfect checks", "falling p / cost", Evidence.Smith,
            [CalculationInput.Words("faults"), CalculationInput.Numbers("p", Units.One, Bounds.NotNegative),
                CalculationInput.Numbers("cost", Units.Minute, Bounds.Positive)],
            [new("order", null), new("expected_cost", Units.Minute)], Sequence),
    ];

    private static CalculationInput Share(string name) => CalculationInput.Number(name, Units.One, new Bounds(0, 1));

    private static CalculationResult Bayes(Given given)
    {
        var (prior, se, sp) = (given["prior"], given["sensitivity"], given["specificity"]);
        var positive = se * prior + (1 - sp) * (1 - prior);
        var negative = (1 - se) * prior + sp * (1 - prior);
        return positive > 0 && negative > 0
            ? given.Answer(se * prior / positive, (1 - se) * prior / negative)
            : Given.Invalid("one of the two outcomes cannot happen");
    }

    private static CalculationResult Ratios(Given given) => given["specificity"] is > 0 and < 1
        ? given.Answer(given["sensitivity"] / (1 - given["specificity"]),
            (1 - given["sensitivity"]) / given["specificity"])
        : Given.Invalid("specificity must lie between 0 and 1");

    private static CalculationResult Posterior(Given given)
    {
        if (given.Numbers("prior").Length != given.Numbers("likelihood").Length)
            return Given.Invalid("prior and likelihood must be equally long");
        return Evidence.Posterior(given.Numbers("prior"), given.Numbers("likelihood")) is { } found
            ? given.Answer(found)
            : Given.Invalid("no fault is left");
    }

    private static CalculationResult Sequence(Given given)
    {
        var (faults, probability, cost) = (given.Words("faults"), given.Numbers("p"), given.Numbers("cost"));
        if (faults.Length != probability.Length || faults.Length != cost.Length)
            return Given.Invalid("faults, p and cost must be equally long");
        if (!(probability.Sum() > 0))
            return Given.Invalid("p must hold something above 0");
        var (order, expected) = Evidence.Sequence(probability, cost);
        return given.Answer(order.Select(i => faults[i]).ToImmutableArray(), expected);
    }
}
