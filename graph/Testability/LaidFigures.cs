using System.Collections.Immutable;

namespace DxAssistant.Graph.Testability;

/// <summary>What rules laid over a plan cost: both are walked on the same units.</summary>
/// <param name="Walks">Units walked both ways.</param>
/// <param name="Priced">
/// Minutes of walks under the rules, with the price of parts changed for nothing and of faults left unfound.
/// </param>
/// <param name="Plain">The same of walks by the plan alone.</param>
/// <param name="Cost">
/// Their difference; below 0 where the rules mend what the plan, bounded in its work, did not see.
/// </param>
/// <param name="Rules">By name.</param>
public sealed record LaidFigures(int Walks, Estimate Priced, Estimate Plain, Estimate Cost,
    ImmutableArray<RuleFigure> Rules)
{
    /// <param name="walks">Of each unit the walk under the rules and the plain one; at least one.</param>
    internal static LaidFigures Of(ImmutableArray<(SessionTally Laid, SessionTally Plain)> walks) => new(
        walks.Length,
        Estimate.MeanOfAmounts([.. walks.Select(walk => walk.Laid.Priced)]),
        Estimate.MeanOfAmounts([.. walks.Select(walk => walk.Plain.Priced)]),
        Estimate.MeanOf([.. walks.Select(walk => walk.Laid.Priced - walk.Plain.Priced)]),
        [
            .. walks.SelectMany(walk => walk.Laid.Losses.Select(loss => loss.Rule).Concat(walk.Laid.HeldBack))
                .Distinct().Order(StringComparer.Ordinal)
                .Select(rule => Of(rule, [.. walks.Select(walk => walk.Laid)])),
        ]);

    /// <summary>The figures of walks that begin at several problems.</summary>
    /// <param name="parts">The weights sum to 1.</param>
    internal static LaidFigures Mixture(ImmutableArray<(double Weight, LaidFigures Laid)> parts) => new(
        parts.Sum(part => part.Laid.Walks),
        Estimate.MixtureOfAmounts(parts.Select(part => (part.Weight, part.Laid.Priced))),
        Estimate.MixtureOfAmounts(parts.Select(part => (part.Weight, part.Laid.Plain))),
        Estimate.Mixture(parts.Select(part => (part.Weight, part.Laid.Cost))),
        [
            .. parts.SelectMany(part => part.Laid.Rules).Select(each => each.Rule).Distinct()
                .Order(StringComparer.Ordinal)
                .Select(rule => new RuleFigure(
                    rule, Often(parts, rule, each => each.Times),
                    Estimate.MixtureOfAmounts(
                        parts.Select(part => (part.Weight, Of(rule, part.Laid, each => each.Minutes)))),
                    Often(parts, rule, each => each.HeldBack))),
        ]);

    private static RuleFigure Of(string rule, ImmutableArray<SessionTally> walks) => new(
        rule,
        Estimate.MeanOfCounts([.. walks.Select(walk => (double)walk.Losses.Count(loss => loss.Rule == rule))]),
        Estimate.MeanOfAmounts(
            [.. walks.Select(walk => walk.Losses.Where(loss => loss.Rule == rule).Sum(loss => loss.Minutes))]),
        Estimate.MeanOfCounts([.. walks.Select(walk => (double)walk.HeldBack.Count(held => held == rule))]));

    private static Estimate Often(ImmutableArray<(double Weight, LaidFigures Laid)> parts, string rule,
        Func<RuleFigure, Estimate> figure) =>
        Estimate.MixtureOfCounts(
            [.. parts.Select(part => (part.Weight, Of(rule, part.Laid, figure), (double)part.Laid.Walks))]);

    private static Estimate Of(string rule, LaidFigures laid, Func<RuleFigure, Estimate> figure) =>
        laid.Rules.FirstOrDefault(each => each.Rule == rule) is { } known ? figure(known) : Estimate.Exactly(0);
}
