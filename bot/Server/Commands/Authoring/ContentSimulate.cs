using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using DxAssistant.Conversation;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Commands.Settings;
using DxAssistant.Server.Simulating;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content simulate</c>: plays hidden faults through the conversation and counts how it went.</summary>
internal static class ContentSimulate
{
    public static Command Make(Streams streams)
    {
        Option<string?> content = CommonOptions.Content();
        var walks = new Option<int>("--walks")
        {
            Description = "Walks for each symptom, series and role.", DefaultValueFactory = _ => 5, HelpName = "N",
        };
        var seed = new Option<ulong>("--seed")
        {
            Description = "What the units are drawn from.", DefaultValueFactory = _ => 1, HelpName = "N",
        };
        var symptom = new Option<string?>("--symptom") { Description = "Only this symptom.", HelpName = "ID" };
        var series = new Option<string?>("--series") { Description = "Only this series.", HelpName = "ID" };
        var role = new Option<string?>("--role") { Description = "Only this role.", HelpName = "ID" };
        var proven = new Option<double>("--proven")
        {
            Description = "Exit 1 under this share of faults proven, %.", DefaultValueFactory = _ => 97, HelpName = "P",
        };
        var wrong = new Option<double>("--wrong")
        {
            Description = "Exit 1 from this many parts changed for nothing a 100 walks, of all or of those not booked.",
            DefaultValueFactory = _ => 3, HelpName = "N",
        };
        var play = new Option<Play?>("--play")
        {
            Description = "Only this play: Plain, Doubts, WrongSign, VainRepair or SecondFault.", HelpName = "PLAY",
        };
        var each = new Option<bool>("--each")
        {
            Description = "Also a row for each symptom on each series by each role.",
        };
        var command =
            new Command("simulate", "Play hidden faults through the conversation: how often is the true fault proven?")
        {
            content, walks, seed, symptom, series, role, play, each, proven, wrong,
        };
        walks.Validators.Add(
            result => { if (result.GetValueOrDefault<int>() < 1) result.AddError("--walks must be 1 or more"); });
        command.SetAction(call =>
        {
            int code = OpenedContent.Open(call.GetValue(content), streams, out Serving.LiveContent? live);
            if (live is null) return code;
            var order = new SimulationOrder(call.GetValue(walks), call.GetValue(seed), call.GetValue(symptom),
                call.GetValue(series), call.GetValue(role))
            {
                Play = call.GetValue(play),
            };
            return Run(new Assistant(live.Current.Library!), order, call.GetValue(each), call.GetValue(proven) / 100,
                call.GetValue(wrong) / 100, streams);
        });
        return command;
    }

    private static int Run(Assistant assistant, SimulationOrder order, bool each, double floor, double ceiling,
        Streams streams)
    {
        if (Unknown(assistant.Library, order) is { } unknown) return streams.Refuse(unknown);
        ImmutableArray<SimulatedCase> cases = SimulatedCases.Draw(assistant.Library, order);
        ImmutableArray<SimulatedWalk> walks = Simulation.Play(assistant, cases, done =>
            streams.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{done} of {cases.Length} walks")));
        streams.Error.WriteLine();
        SimulationReport.Write(streams.Out, order, walks, each);
        WalkTally tally = WalkTally.Of(walks);
        return tally.ProvenShare >= floor && tally.WrongPartsPerWalk < ceiling
            && tally.WrongPartsPerWalkWithin < ceiling ? ExitCode.Done : ExitCode.Problems;
    }

    private static string? Unknown(Library library, SimulationOrder order)
    {
        if (order.Series is { } series && !library.Series.ContainsKey(series))
            return $"there is no series {series}: {string.Join(", ", library.Series.Keys)}";
        if (order.Role is { } role && library.Roles.All(page => page.Role.Id != role))
            return $"there is no role {role}: {string.Join(", ", library.Roles.Select(page => page.Role.Id))}";
        return order.Symptom is { } symptom && library.Symptoms.Keys.All(id => id.Value != symptom)
            ? $"there is no symptom {symptom}: see the folder symptoms of the pages"
            : null;
    }
}
