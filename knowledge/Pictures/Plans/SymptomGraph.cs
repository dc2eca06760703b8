using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A symptom with its faults, the checks that tell them and the repairs that cure them.</summary>
public sealed class SymptomGraph
{
    private readonly Library library;
    private readonly SequencingProblem problem;
    private readonly IPictureWords words;
    private readonly ImmutableArray<FaultId> faults;
    private readonly ImmutableArray<(CheckId Check, FaultId Fault, bool Proves)> tells;
    private readonly ImmutableArray<(FaultId Fault, RepairId Repair)> cures;

    private SymptomGraph(Library library, SequencingProblem problem, IPictureWords words)
    {
        (this.library, this.problem, this.words) = (library, problem, words);
        faults = [.. problem.Faults.OrderByDescending(fault => Math.Round(fault.Weight, 9)).ThenBy(fault => fault.Id)
            .Select(fault => fault.Id)];
        tells = [.. faults.SelectMany(Telling)];
        cures = [.. faults.SelectMany(fault => problem.Repairs
            .Where(repair => repair.Id != RepairId.HandOver && repair.Fixes.Contains(fault))
            .Select(repair => (fault, repair.Id)))];
    }

    /// <summary>Draws it; null when no fault of the series shows the symptom.</summary>
    public static Planned? Draw(Library library, SeriesPage series, SymptomPage symptom, IPictureWords words,
        ILayeredLayout layout) =>
        PlanProblem.Of(library, series, symptom.Id) is { } problem
            ? new SymptomGraph(library, problem, words).Draw(series, symptom, layout)
            : null;

    private IEnumerable<(CheckId, FaultId, bool)> Telling(FaultId fault)
    {
        CheckId[] proof = [.. library.Faults[fault].Demanded.Where(id => problem.Checks.Any(check => check.Id == id))];
        foreach (CheckId check in proof) yield return (check, fault, true);
        if (Telltale.Best(problem, fault) is { } best && !proof.Contains(best)) yield return (best, fault, false);
    }

    private Planned Draw(SeriesPage series, SymptomPage symptom, ILayeredLayout layout)
    {
        var sheet = new GraphSheet(
            [.. tells.Select(tell => tell.Check).Distinct().Select(Box)], [.. faults.Select(Box)],
            [.. cures.Select(cure => cure.Repair).Distinct().Select(Box)],
            [.. tells.Select(tell => new GraphLine(Id(tell.Check), Id(tell.Fault), tell.Proves)),
                .. cures.Select(cure => new GraphLine(Id(cure.Fault), Id(cure.Repair), true))]);
        return new Planned(sheet.Draw(symptom, series, words, layout), [.. faults.SelectMany(Lines)]);
    }

    private static string Id(CheckId id) => $"check {id}";

    private static string Id(FaultId id) => $"fault {id}";

    private static string Id(RepairId id) => $"repair {id}";

    private GraphBox Box(CheckId id) =>
        GraphBox.Of(Id(id), library.Checks[id].Title.Text, library.Checks[id].Title.Place.Path);

    private GraphBox Box(FaultId id) => GraphBox.Of(Id(id), Share(id), library.Faults[id].Title.Place.Path);

    private GraphBox Box(RepairId id) =>
        GraphBox.Of(Id(id), library.Repairs[id].Title.Text, library.Repairs[id].Title.Place.Path)
            with { IsRepair = true };

    private string Share(FaultId fault) => words.Say("picture-symptom-fault",
        ("fault", library.Faults[fault].Title.Text),
        ("share", Shares.Percent(words, problem.Begin().ProbabilityOf(fault))));

    private IEnumerable<PlannedLine> Lines(FaultId fault) =>
    [
        new(0, Share(fault)),
        .. tells.Where(tell => tell.Fault == fault).Select(tell => new PlannedLine(1,
            words.Say(tell.Proves ? "picture-symptom-proven" : "picture-symptom-told",
                ("check", library.Checks[tell.Check].Title.Text)))),
        .. cures.Where(cure => cure.Fault == fault).Select(cure => new PlannedLine(1,
            words.Say("picture-symptom-cured", ("repair", library.Repairs[cure.Repair].Title.Text)))),
    ];
}
