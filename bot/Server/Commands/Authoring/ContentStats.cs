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
    private readonly Argument<string?> folder = ContentCommand.Folder();
    private readonly Option<string?> series = new("--series") { Description = "Only this series.", HelpName = "ID" };
    private readonly Option<string?> who = new("--who")
        { Description = "The role of the person at the unit. Default: the one that may do most.", HelpName = "ROLE" };
    private readonly Option<int> walks =
        Number("--walks", "Units drawn for each symptom; each is walked with the rules and without.", 40);
    private readonly Option<int> seed = Number("--seed", "Where the draws of the walks begin.", 1);
    private readonly Option<int> work =
        Number("--work", "The planner's work for a step. Default: what conversations use.", LivePlanner.UsualWork);
    private readonly Option<int> exact = Number("--exact",
        "Symptoms whose walks have at most so many positions are gone through whole; the others are drawn.", 300);
    private readonly Option<bool> trade = new("--trade")
        { Description = "Play it again with wrong parts at other prices: minutes against parts." };
    private readonly Option<bool> each = new("--each") { Description = "With --trade: also for each symptom." };
    private readonly Option<bool> json = new("--json") { Description = "JSON instead of tables." };

    public Command Make()
    {
        var stats = new Command("stats",
            "Say how well each symptom can be walked to its fault: detected, isolated, minutes, wrong parts.")
            { folder, series, who, walks, seed, work, exact, trade, each, json };
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
        if (role is null)
            return streams.Refuse(
                $"there is no role {call.GetValue(who)}: write one of {string.Join(", ", library.Roles.Select(page => page.Role.Id))}");
        ImmutableArray<SeriesPage> chosen = [.. library.Series.Values
            .Where(page => call.GetValue(series) is not { } only || page.Id == only)];
        if (chosen.IsEmpty)
            return streams.Refuse(
                $"there is no series {call.GetValue(series)}: write one of {string.Join(", ", library.Series.Keys)}");
        if (call.GetValue(walks) < 1 || call.GetValue(work) < 1)
            return streams.Refuse("--walks and --work are 1 or more");
        if (call.GetValue(each) && !call.GetValue(trade)) return streams.Refuse("--each is for --trade: write both");
        if (call.GetValue(exact) < 0) return streams.Refuse("--exact is 0 or more");
        var table = call.GetValue(json) ? null : new StatsTable(library, streams.Out);
        table?.Begin(role, call.GetValue(work));
        ImmutableArray<SeriesStats> all = [.. chosen.Select(page => Assess(library, page, role, call, table))];
        TradeFigures? traded = call.GetValue(trade) ? Traded(library, role, call).Of(all) : null;
        streams.Error.WriteLine();
        if (table is not null && traded is not null) TradeTable.Write(traded, call.GetValue(each), streams.Out);
        if (table is null)
            streams.Out.WriteLine(StatsJson.Of(all, traded, role, library, call.GetValue(work))
                .ToJsonString(JsonLines.Plain));
        return ExitCode.Done;
    }

    private StatsTrade Traded(Library library, Role role, ParseResult call) =>
        new(library, role, call.GetValue(walks), (ulong)call.GetValue(seed), call.GetValue(work))
        {
            Progress = (done, of) => Say($"prices of a wrong part: {done} of {of} symptoms"),
        };

    // A series is written as soon as it is done: the next may take minutes.
    private SeriesStats Assess(Library library, SeriesPage page, Role role, ParseResult call, StatsTable? table)
    {
        FaultGraph graph = library.Graph;
        bool Elsewhere(ImmutableSortedSet<string> only) => !only.IsEmpty && !only.Contains(page.Id);
        Situation situation = new(role, graph.Access.Start)
        {
            BarredChecks = [.. library.Checks.Values.Where(check => Elsewhere(check.Series)).Select(check => check.Id)],
            HandOverMinutes = library.HandOverMinutes,
        };
        Assessment assessment = new(graph, situation, new LivePlanner(call.GetValue(work)))
        {
            MostPositions = call.GetValue(exact),
            Walked = symptom => WalkedBy(library, page, symptom, role, call.GetValue(work)),
            Progress = (symptom, done, of) => Say($"{page.Id}: {done} of {of} symptoms, {symptom}"),
        };
        ImmutableHashSet<FaultId> applicable =
            [.. library.Faults.Values.Where(fault => !Elsewhere(fault.Series)).Select(fault => fault.Id)];
        var stats =
            new SeriesStats(page.Id, assessment.Assess(call.GetValue(walks), (ulong)call.GetValue(seed), applicable));
        table?.Write(stats);
        return stats;
    }

    private void Say(string progress) => streams.Error.Write($"\r{progress,-70}");

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
