using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Pages that hold what a matrix says; what it does not say is marked <see cref="ToDo"/> on the page.
/// </summary>
public sealed partial class PageSkeleton
{
    /// <summary>Stands wherever a person must write something.</summary>
    public const string ToDo = "To do:";

    private const string NoneOfThese = "none-of-these", Watch = "watch-and-record", OnlySymptom = "does-not-work";

    // A page takes probabilities above 0 and below 1: nothing is certain.
    private const double Least = 0.001;

    private readonly DependencyMatrix matrix;
    private readonly PageIds ids = new();
    private readonly ImmutableArray<double> weights;
    private readonly Func<double, string> frequency;

    private PageSkeleton(DependencyMatrix matrix, Func<double, string>? frequency)
    {
        this.matrix = matrix;
        this.frequency = frequency ?? (weight => $"weight-{weights.IndexOf(weight) + 1}");
        weights = [.. matrix.Faults.Select(fault => fault.Weight).Distinct().Order()];
    }

    /// <summary>The pages by path, and what is left to do, page by page.</summary>
    public static (ImmutableSortedDictionary<string, string> Pages,
        ImmutableArray<string> ToDos) Of(DependencyMatrix matrix)
    {
        var pages = Of(matrix, frequency: null);
        return (pages, ToDosOn(pages));
    }

    /// <param name="frequency">The word for a weight; null for words made from the weights.</param>
    internal static ImmutableSortedDictionary<string, string> Of(DependencyMatrix matrix,
        Func<double, string>? frequency) =>
        new PageSkeleton(Completed(matrix), frequency).Pages();

    /// <summary>The lines of pages that a person must write, each behind the path of its page.</summary>
    internal static ImmutableArray<string> ToDosOn(IEnumerable<KeyValuePair<string, string>> pages) =>
        [.. pages.SelectMany(page => page.Value.Split('\n')
            .Where(line => line.Contains(ToDo, StringComparison.Ordinal))
            .Select(line => $"{page.Key}: {line.Trim()}"))];

    /// <summary>
    /// A folder that knows no fault yet: what every folder needs, with all words and one series, and what is left to
    /// do.
    /// </summary>
    public static (ImmutableSortedDictionary<string, string> Pages, ImmutableArray<string> ToDos) Empty()
    {
        var none = new MatrixFault(NoneOfThese, 2, [Watch]);
        var (pages, toDos) = Of(new DependencyMatrix([none], [], []));
        return (pages.SetItem("words.md", FixedPages.AllWords)
            .SetItem("series/any-unit.md", FixedPages.AnySeries).SetItem("coverage/any-unit.md", FixedPages.AnyCoverage)
            .SetItem("index.md", pages["index.md"] + "- [Any unit](series/any-unit.md)\n")
            .SetItem($"faults/{NoneOfThese}.md",
                pages[$"faults/{NoneOfThese}.md"].Replace("weight-1", "occasional", StringComparison.Ordinal)), toDos);
    }

    // Pages need a symptom to begin with, and the fault that stands for none of those known.
    private static DependencyMatrix Completed(DependencyMatrix given)
    {
        DependencyMatrix matrix = given.Symptoms.IsEmpty
            ? given with
            {
                Symptoms = [new MatrixSymptom(OnlySymptom, given.Faults.ToImmutableSortedDictionary(
                    fault => fault.Id, _ => 0.9, StringComparer.Ordinal))],
            }
            : given;
        if (matrix.Faults.Any(fault => fault.Id == NoneOfThese)) return matrix;
        return matrix with
        {
            Faults = matrix.Faults.Add(new MatrixFault(NoneOfThese, matrix.Faults.Min(fault => fault.Weight), [Watch])),
            Symptoms = [.. matrix.Symptoms.Select(symptom => symptom
                with { Causes = symptom.Causes.SetItem(NoneOfThese, 0.1) })],
            Checks = [.. matrix.Checks.Select(check => check with
            {
                Rows = check.Rows.SetItem(NoneOfThese, [.. check.Outcomes.Select(_ => 1.0 / check.Outcomes.Length)]),
            })],
        };
    }

    private ImmutableSortedDictionary<string, string> Pages()
    {
        var pages = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach ((string path, string text) in FixedPages.All) pages[path] = text;
        pages["words.md"] = FixedPages.Words + string.Concat(weights.Select((weight, place) =>
            $"| weight-{place + 1} | {Number(weight)} | {FixedPages.Source("")} |\n"));
        foreach (MatrixFault fault in matrix.Faults) pages[$"faults/{ids.Of(fault.Id)}.md"] = Page(fault);
        foreach (string repair in matrix.Faults.SelectMany(RepairsOf).Distinct())
            pages[$"repairs/{ids.Of(repair)}.md"] = Repair(repair);
        foreach (MatrixSymptom symptom in matrix.Symptoms) pages[$"symptoms/{ids.Of(symptom.Id)}.md"] = Page(symptom);
        foreach (MatrixCheck check in matrix.Checks) pages[$"checks/{ids.Of(check.Id)}.md"] = Page(check);
        pages["index.md"] = FixedPages.Index + string.Concat(
            matrix.Symptoms.Select(symptom => $"- {Link("symptoms/", symptom.Id)}\n")
                .Concat(matrix.Checks.Select(check => $"- {Link("checks/", check.Id)}\n")));
        return pages.ToImmutable();
    }

    private IEnumerable<string> RepairsOf(MatrixFault fault) =>
        fault.Repairs.IsEmpty ? [$"mend-{ids.Of(fault.Id)}"] : fault.Repairs;

    private string Page(MatrixFault fault) =>
        $"""
        ---
        kind: fault
        id: {ids.Of(fault.Id)}
        frequency: {frequency(fault.Weight)}
        {(fault.Id == NoneOfThese ? "site: true" : $"part: \"{ToDo} name the part that failed, or put site true in place of this line\"")}
        ---
        # {Title(fault.Id)}
        {ToDo} say what it is.

        ## Said as
        - {Title(fault.Id).ToLowerInvariant()}

        ## Seen
        {ToDo} say what is seen and heard.

        ## Measured
        {ToDo} say what readings show.

        ## Proof
        {ToDo} say what proves it.

        ## Repair
        {string.Join('\n', RepairsOf(fault).Select(repair => $"- {Link("../repairs/", repair)}"))}

        ## Beware
        - {ToDo} name the cautions.

        ## Warranty
        {ToDo} say what the warranty desk wants to see.

        """;

    private string Repair(string repair) =>
        $"""
        ---
        kind: repair
        id: {ids.Of(repair)}
        minutes: 30
        verify-minutes: 10
        access: [isolated-open]
        who: technician
        parts: []
        ---
        # {Title(repair)}
        {ToDo} give minutes, access state, role and parts in the front matter; those there are made up.

        ## Steps
        1. {ToDo} say how it is done.

        ## Verify
        Does the unit run for ten minutes without the complaint?

        ## Sources
        - {FixedPages.Source("../")}

        """;

    private string Page(MatrixSymptom symptom) =>
        $"""
        ---
        kind: symptom
        id: {ids.Of(symptom.Id)}
        ---
        # {Title(symptom.Id)}
        {ToDo} say what is seen.

        ## Said as
        - {Title(symptom.Id).ToLowerInvariant()}

        ## Causes
        | Fault | How often |
        |---|---|
        {Lines(symptom.Causes.Select(cause => $"| {Link("../faults/", cause.Key)} | {Probability(cause.Value)} |"))}

        """;

    private string Page(MatrixCheck check) =>
        $"""
        ---
        kind: check
        id: {ids.Of(check.Id)}
        minutes: 5
        access: [isolated-open]
        who: technician
        ---
        # {Title(check.Id)}
        {ToDo} give minutes, access state and role in the front matter; those there are made up.

        ## Ask
        {ToDo} ask for {Title(check.Id).ToLowerInvariant()}?

        ## How
        1. {ToDo} say how it is done.

        ## Outcomes
        | Outcome | Answer |
        |---|---|
        {Lines(check.Outcomes.Select(outcome => $"| {ids.Of(outcome)} | {Title(outcome)} |"))}

        ## Likelihoods
        | Fault | {string.Join(" | ", check.Outcomes.Select(ids.Of))} |
        |---|{string.Concat(check.Outcomes.Select(_ => "---|"))}
        {Lines(matrix.Faults.Select(fault => $"| {Link("../faults/", fault.Id)} | {Shares(check.Rows[fault.Id])} |"))}
        | every other fault | {Shares([.. check.Outcomes.Select(_ => 1.0 / check.Outcomes.Length)])} |

        ## Sources
        - {FixedPages.Source("../")}

        """;

    private string Link(string folder, string id) => $"[{Title(id)}]({folder}{ids.Of(id)}.md)";

    // An id becomes words; a name stays as it was given, whatever signs are in it.
    private string Title(string id)
    {
        string words = ids.Of(id) == id ? id.Replace('-', ' ') : Plain().Replace(id, "\\$0");
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    // Signs that mean something in Markdown.
    [GeneratedRegex(@"[\\`*_\[\]<>|#~]", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);

    private static string Shares(ImmutableArray<double> row) => string.Join(" | ", row.Select(Probability));

    private static string Probability(double value) => Number(Math.Clamp(value, Least, 1 - Least));

    private static string Number(double value) => value.ToString("0.#########", CultureInfo.InvariantCulture);
}
