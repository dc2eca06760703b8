using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>The planned walk of a symptom as a flowchart that fits on one page of A4, for the van.</summary>
/// <remarks>The likeliest places are kept, as many as fit; what was left off is said on the page.</remarks>
public sealed class WalkPage
{
    /// <summary>The planner's work for the first steps, as a conversation has it.</summary>
    public const int UsualWork = LivePlanner.UsualWork;

    private static readonly int[] Columns = [2, 3, 4];

    private const int MostSteps = 100, LimitWidth = 2, LimitWorkShare = 40;
    // Below one walk in twenty what is planned no longer changes the page; half the share takes twice the time.
    private const double LimitShare = 0.05, WorthItsRoom = 0.02;

    private readonly Library library;
    private readonly SequencingProblem problem;
    private readonly WalkSheet sheet;
    private readonly Func<int, WalkRules> rules;

    private WalkPage(Library library, SeriesPage series, SymptomPage symptom, SequencingProblem problem,
        WalkSheet sheet)
    {
        (this.library, this.problem, this.sheet) = (library, problem, sheet);
        rules = work => new WalkRules(library, problem, PlanProblem.SituationOf(library, series, symptom.Id),
            symptom.Id, work);
    }

    /// <summary>Draws it; null when no fault of the series shows the symptom.</summary>
    /// <param name="checks">Most checks on the page, chosen for that number; null for the plan as it is.</param>
    /// <param name="work">The planner's work for a step; above 0.</param>
    public static Planned? Draw(
        Library library, SeriesPage series, SymptomPage symptom, IPictureWords words, int? checks = null,
        int work = UsualWork)
    {
        if (PlanProblem.Of(library, series, symptom.Id) is not { } problem) return null;
        var sheet = new WalkSheet(library, series, symptom, words, checks);
        return sheet.Draw(new WalkPage(library, series, symptom, problem, sheet).Laid(checks, work));
    }

    /// <summary>The walk with each step in its place, for tests.</summary>
    internal static WalkLayout? Lay(Library library, SeriesPage series, SymptomPage symptom, IPictureWords words,
        int? checks, int work) =>
        PlanProblem.Of(library, series, symptom.Id) is { } problem
            ? new WalkPage(library, series, symptom, problem,
                new WalkSheet(library, series, symptom, words, checks)).Laid(checks, work)
            : null;

    // Questions are printed where they cost no steps to speak of.
    private WalkLayout Laid(int? checks, int work)
    {
        WalkNode whole = Grown(checks, work);
        WalkLayout terse = Best(whole, isFull: false), full = Best(whole, isFull: true);
        return full.Tree.Doubt <= terse.Tree.Doubt + WorthItsRoom ? full : terse;
    }

    private WalkNode Grown(int? checks, int work)
    {
        WalkRules stepped = rules(work);
        if (checks is not { } most) return new WalkTree(problem, (here, _) => stepped.Next(here)).Grow(MostSteps);
        var limited = new LimitedStrategy(problem, most, LimitWidth, LimitShare, Math.Max(1, work / LimitWorkShare),
            new ProofRule(stepped.Proof, library.HandOverMinutes));
        return new WalkTree(problem, limited.Next).Grow(MostSteps, most);
    }

    private WalkLayout Best(WalkNode whole, bool isFull) => Columns
        .Select(columns => Fitted(whole, columns, isFull)).MinBy(layout => Math.Round(layout.Tree.Doubt, 6))!;

    private WalkLayout Fitted(WalkNode whole, int columns, bool isFull)
    {
        var box = new WalkBox((WalkSheet.Width - WalkPacking.Gap * (columns - 1)) / columns);
        var writer = new WalkWriter(library, sheet.Words, isFull);
        WalkStep? placed = null;
        bool Fits(WalkNode tree)
        {
            placed = writer.Write(tree);
            return WalkPacking.TryPlace(placed, box, columns, WalkSheet.HeadBottom, sheet.Floor(tree));
        }

        WalkNode tree = WalkSelection.Choose(whole, Fits);
        Fits(tree);
        return new WalkLayout(tree, placed!, box);
    }
}
