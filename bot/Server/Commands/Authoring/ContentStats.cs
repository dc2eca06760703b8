using System.Collections.Immutable;
using System.CommandLine;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Knowledge.Walks;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content stats</c>: how well the pages lead from each symptom to a verified repair.</summary>
internal sealed class ContentStats(Streams streams)
{
    // The factors by which the price of a wrong part is changed to see what minutes and parts trade for.
    private static readonly double[] Factors = [0, 0.5, 1, 2, 4];

    // Symptoms whose walks have more positions than this are played: most have thousands.
    private const int ExactWithin = 50;

    private readonly Argument<string?> folder = ContentCommand.Folder();
    private readonly Option<string?> series = new("--series") { Description = "Only this series.", HelpName = "ID" };
    private readonly Option<string?> who = new("--who")
        { Description = "The role of the person at the unit. Default: the one that may do most.", HelpName = "ROLE" };
    private readonly Option<int> walks = Number("--walks", "Units drawn for each symptom; each is walked with the rules and without.", 40);
    private readonly Option<int> seed = Number("--seed", "Where the draws of the walks begin.", 1);
    private readonly Option<int> work = Number("--work", "The planner's work for a step. Default: what conversations use.", LivePlanner.UsualWork);
    private readonly Option<bool> trade = new("--trade")
        { Description = "Play it again with wrong parts at other prices: minutes against parts." };
    private readonly Option<bool> json = new("--json") { Description = "JSON instead of tables." };

    public Command Make()
    {
        var stats = new Command("stats", "Say how well each symptom can be walked to its fault: detected, isolated, minutes, wrong parts.")
            { folder, series, who, walks, seed, work, trade, json };
        stats.SetAction(Run);
        return stats;
    }

    private int Run(ParseResult call)
    {
        int code = OpenedPages.Open(call.GetValue(folder), streams, out Library? library);
        if (library is null) return code;
        Role? role = call.GetValue(who) is { } named
            ? library.Roles.FirstOrDefault(page => page.Role.Id == named)?.Role
            : library.Roles.MaxBy(page => page.Role.Rank)!.Role;
        if (role is null) return streams.Refuse($"there is no role {call.GetValue(who)}: write one of {string.Join(", ", library.Roles.Select(page => page.Role.Id))}");
        ImmutableArray<SeriesPage> chosen = [.. library.Series.Values
            .Where(page => call.GetValue(series) is not { } only || page.Id == only)];
        if (chosen.IsEmpty) return streams.Refuse($"there is no series {call.GetValue(series)}: write one of {string.Join(", ", library.Series.Keys)}");
        if (call.GetValue(walks) < 1 || call.GetValue(work) < 1) return streams.Refuse("--walks and --work are 1 or more");
        ImmutableArray<SeriesStats> all = [.. chosen.Select(page => Assess(library, page, role, call, 1))];
        var prices = call.GetValue(trade)
            ? Factors.Select(factor => new PriceStats(factor, Overall(library, chosen, role, call, factor))).ToImmutableArray()
            : [];
        streams.Error.WriteLine();
        if (call.GetValue(json)) streams.Out.WriteLine(StatsJson.Of(all, prices, role, library, call.GetValue(work)).ToJsonString(JsonLines.Plain));
        else StatsTable.Write(all, prices, role, library, call.GetValue(work), streams.Out);
        return ExitCode.Done;
    }

    private ImmutableArray<OverallFigures> Overall(
        Library library, ImmutableArray<SeriesPage> chosen, Role role, ParseResult call, double factor) =>
        [.. chosen.Select(page => Assess(library, page, role, call, factor).Report.Overall)];

    private SeriesStats Assess(Library library, SeriesPage page, Role role, ParseResult call, double factor)
    {
        FaultGraph graph = factor == 1 ? library.Graph : library.Graph.WithWrongParts(factor);
        bool Elsewhere(ImmutableSortedSet<string> only) => !only.IsEmpty && !only.Contains(page.Id);
        Situation situation = new(role, graph.Access.Start)
        {
            BarredChecks = [.. library.Checks.Values.Where(check => Elsewhere(check.Series)).Select(check => check.Id)],
            HandOverMinutes = library.HandOverMinutes,
        };
        int done = 0;
        Assessment assessment = new(graph, situation, new LivePlanner(call.GetValue(work)))
        {
            MostPositions = Math.Min(call.GetValue(walks), ExactWithin),
            Walked = symptom => WalkedBy(factor == 1 ? library : library with { Graph = graph }, page, symptom, role, call.GetValue(work)),
            Progress = symptom => streams.Error.Write($"\r{page.Id}: {++done} symptoms, {symptom,-40}"),
        };
        ImmutableHashSet<FaultId> applicable =
            [.. library.Faults.Values.Where(fault => !Elsewhere(fault.Series)).Select(fault => fault.Id)];
        return new SeriesStats(page.Id, assessment.Assess(call.GetValue(walks), (ulong)call.GetValue(seed), applicable));
    }

    // As a conversation walks it, and by the plan alone.
    private static WalkedBy WalkedBy(Library library, SeriesPage page, SymptomId symptom, Role role, int work)
    {
        Situation asked = PlanProblem.SituationOf(library, page, symptom, role);
        var walked = new WalkPolicy(library, asked, symptom, work);
        return new WalkedBy(asked, walked.Plain, walked);
    }

    private static Option<int> Number(string name, string description, int usual) => new(name)
    {
        Description = description,
        HelpName = "N",
        DefaultValueFactory = _ => usual,
    };
}
