using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Building;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content;

/// <summary>Everything a content folder says, compiled and ready for use. Immutable; ordered by id (ordinal).</summary>
public sealed record Library
{
    // The row of the table of prices that says what a second visit by somebody else costs, and its value without it.
    private const string LeftToOthers = "work left to somebody else";
    private const double UsualHandOver = 240;

    /// <summary>The row of the table of prices that says what a part costs that did not cure.</summary>
    internal const string PartForNothing = "part changed for nothing";

    /// <summary>The first 16 hexadecimal digits of the SHA-256 of all pages and pictures.</summary>
    public required string Version { get; init; }

    public required FaultGraph Graph { get; init; }

    public required ImmutableSortedDictionary<string, SeriesPage> Series { get; init; }

    public required ImmutableSortedDictionary<SymptomId, SymptomPage> Symptoms { get; init; }

    public required ImmutableSortedDictionary<FaultId, FaultPage> Faults { get; init; }

    public required ImmutableSortedDictionary<CheckId, CheckPage> Checks { get; init; }

    public required ImmutableSortedDictionary<RepairId, RepairPage> Repairs { get; init; }

    public required ImmutableSortedDictionary<AccessId, AccessPage> Access { get; init; }

    public required ImmutableSortedDictionary<string, CautionPage> Cautions { get; init; }

    public required ImmutableSortedDictionary<string, CoveragePage> Coverage { get; init; }

    public required ImmutableSortedDictionary<string, RefusalPage> Refusals { get; init; }

    public required ImmutableSortedDictionary<string, Source> Sources { get; init; }

    /// <summary>Lowest rank first.</summary>
    public required ImmutableArray<RolePage> Roles { get; init; }

    public required ImmutableArray<GlossaryEntry> Glossary { get; init; }

    public required PhraseBook Phrases { get; init; }

    public required ImmutableSortedDictionary<string, CurvePage> Curves { get; init; }

    /// <summary>Classes of meters that checks name.</summary>
    public required ImmutableSortedDictionary<string, MeterPage> Meters { get; init; }

    /// <summary>What the likelihood words mean.</summary>
    public required ImmutableSortedDictionary<string, double> LikelihoodWords { get; init; }

    /// <summary>What the frequency words mean: weights of faults against each other.</summary>
    public required ImmutableSortedDictionary<string, double> FrequencyWords { get; init; }

    /// <summary>What is priced in minutes although it takes none.</summary>
    public required ImmutableSortedDictionary<string, double> Prices { get; init; }

    /// <summary>
    /// How earlier work on a unit changes the odds, the shortest time first; empty when the pages do not say.
    /// </summary>
    public ImmutableArray<EarlierOdds> EarlierOdds { get; init; } = [];

    /// <summary>What the pages set for the course of a conversation.</summary>
    public WalkSettings Settings { get; init; } = WalkSettings.Usual;

    /// <summary>What it costs to change a part that does not cure, minutes; 0 where the pages do not say.</summary>
    public double PartInVainMinutes => Prices.GetValueOrDefault(PartForNothing);

    /// <summary>What it costs to leave a case to somebody else, minutes.</summary>
    public double HandOverMinutes => Prices.GetValueOrDefault(LeftToOthers, UsualHandOver);

    /// <summary>The inputs of a check's calculation, those that the series gives included.</summary>
    /// <exception cref="ArgumentException">The check calculates nothing, or is not for the series.</exception>
    public ImmutableSortedDictionary<string, JudgeInput> JudgeInputsFor(CheckPage check, SeriesPage series) =>
        JudgeInputs.For(check, series, this);

    /// <summary>What words of the trade mean, by id.</summary>
    public ImmutableSortedDictionary<string, TermPage> Terms { get; init; } =
        ImmutableSortedDictionary.Create<string, TermPage>(StringComparer.Ordinal);

    /// <summary>The clarifying questions, by id.</summary>
    public ImmutableSortedDictionary<string, QuestionPage> Questions { get; init; } =
        ImmutableSortedDictionary.Create<string, QuestionPage>(StringComparer.Ordinal);

    /// <summary>All languages that a page stands for, spoken or not, by tag.</summary>
    public ImmutableSortedDictionary<string, LanguagePage> Languages { get; init; } =
        ImmutableSortedDictionary.Create<string, LanguagePage>(StringComparer.Ordinal);

    /// <summary>The language that the texts are in; null when no page says so.</summary>
    public LanguagePage? Language { get; init; }

    /// <summary>
    /// The same library in each other language that is spoken, by tag; what has no text there is as here.
    /// </summary>
    public Translations Translations { get; init; } = Translations.None;
}
