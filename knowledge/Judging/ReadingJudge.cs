using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Judging;

/// <summary>What all judges share: checking what they were given, refusing what cannot be, and the rule of
/// decision.</summary>
internal abstract class ReadingJudge(
    string name, ImmutableArray<ReadingNeed> readings, ImmutableArray<InputNeed> inputs,
        ImmutableArray<VerdictKind> verdicts) : IJudge
{
    public string Name { get; } = name;

    public ImmutableArray<ReadingNeed> Readings { get; } = readings;

    public virtual ImmutableArray<int> Counts => [Readings.Length];

    public ImmutableArray<InputNeed> Inputs { get; } = inputs;

    public ImmutableArray<VerdictKind> Verdicts { get; } = verdicts;

    /// <summary>Where the expectation comes from.</summary>
    protected abstract Citation Source { get; }

    public string? ProblemWith(ImmutableSortedDictionary<string, JudgeInput> inputs) =>
        inputs.Keys.Where(given => Inputs.All(need => need.Name != given))
            .Select(given => $"{Name} has no input {given}")
            .Concat(Inputs.Select(need => InputProblem.Of(need, inputs.GetValueOrDefault(need.Name))).OfType<string>())
            .FirstOrDefault() ?? InputProblem.Turned(inputs) ?? InputProblem.OfMeter(this, inputs);

    public Judgement Judge(JudgeRequest request)
    {
        if (ProblemWith(request.Inputs) is { } problem)
            throw new ArgumentException(problem, nameof(request));
        if (!Counts.Contains(request.Readings.Length))
            throw new ArgumentException(
                $"{Name} takes {string.Join(" or ", Counts)} readings, not {request.Readings.Length}", nameof(request));
        var facts = new Facts(this, request);
        return Refuse(facts) ?? DecisionRule.Take(this, Find(facts));
    }

    public Judgement? JudgeAlone(int index, Reading reading, ImmutableSortedDictionary<string, JudgeInput> inputs)
    {
        if (ProblemWith(inputs) is { } problem) throw new ArgumentException(problem, nameof(inputs));
        if (index < 0 || index >= Readings.Length)
            throw new ArgumentException($"{Name} has no reading {index}", nameof(index));
        var facts = new Facts(this, new JudgeRequest([reading], inputs));
        return FindAlone(index, facts) is { } finding
            && DecisionRule.Take(this, finding) is { Verdict: not VerdictKind.TooCloseToCall } judgement
            ? judgement : null;
    }

    /// <summary>
    /// Weighs the one reading of <paramref name="facts"/> where the others do not matter; null where they do.
    /// </summary>
    protected virtual Finding? FindAlone(int index, Facts facts) => null;

    /// <summary>Weighs readings that are of the right kind and possible.</summary>
    protected abstract Finding Find(Facts facts);

    /// <summary>True when a reading that is no number (open, short) has a meaning here.</summary>
    protected virtual bool Accepts(Facts facts, int index) => facts.IsNumber(index);

    /// <summary>True when such a number can be read at all.</summary>
    protected virtual bool IsPossible(Facts facts, int index) =>
        facts.Reading(index).Unit.Kind is not (QuantityKind.Resistance or QuantityKind.Voltage or QuantityKind.Current)
            || facts[index] >= 0;

    /// <summary>Why the readings cannot be together, each of them being possible; null when they can.</summary>
    protected virtual Contradiction? ContradictionIn(Facts facts) => null;

    protected Judgement Impossible(string settle, string? which = null, string? pattern = null) =>
        DecisionRule.Impossible(settle, Derivation.Of("no verdict", Source), which, Source)
            with { PatternKey = pattern };

    private Judgement? Refuse(Facts facts)
    {
        foreach (var index in facts.Indices)
        {
            if (Readings[index].Kind is { } wanted && facts.IsNumber(index)
                && !Kinds.Fit(wanted, facts.Reading(index).Unit.Kind))
                return Impossible(ToSettle.CheckUnit, facts.Label(index));
            if (!Accepts(facts, index) || facts.IsNumber(index)
                && !(double.IsFinite(facts[index]) && IsPossible(facts, index)))
                return Impossible(ToSettle.CheckReading, facts.Label(index));
        }
        return ContradictionIn(facts) is { } contradiction
            ? Impossible(ToSettle.CheckReading, contradiction.Which, contradiction.Pattern) : null;
    }
}
