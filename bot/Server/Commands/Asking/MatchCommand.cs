using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Server.Commands.Scoring;
using DxAssistant.Server.Commands.Settings;

namespace DxAssistant.Server.Commands.Asking;

/// <summary><c>match</c>: words in, the faults they fit out.</summary>
internal static class MatchCommand
{
    public static Command Make(Streams streams)
    {
        var content = CommonOptions.Content();
        const string forms = """JSON Lines: {"text","series"?} in, {"decision","candidates","codes","readings"} out.""";
        var score = ScoreFile.Option();
        var figures = ScoreFile.Figures();
        var match = new Command("match", forms) { content, score, figures };
        match.SetAction((call, cancel) => call.GetValue(score) is { Length: > 0 } files
            ? Task.FromResult(Score(call.GetValue(content), files, streams, call.GetValue(figures)))
            : RunAsync(call.GetValue(content), streams, cancel));
        return match;
    }

    private static int Score(string? folder, string[] files, Streams streams, bool figuresOnly)
    {
        int opened = OpenedContent.Open(folder, streams, out var live);
        if (live is null) return opened;
        using (live)
        {
            var library = live.Current.Library!;
            var matcher = Matcher.For(library);
            using var plain = new PlainSearch(SearchEntries.From(library));
            return ScoreFile.Run(files, lines => Sheet([.. lines], matcher, plain), streams, figuresOnly);
        }
    }

    // A set is of faults or of complaints: its first line tells.
    private static IScoreSheet Sheet(ImmutableArray<string> lines, Matcher matcher, PlainSearch plain) =>
        ScoreFile.Each(lines.Take(1), SymptomLine.Is) is [{ Read: true }]
            ? new SymptomSheet(ScoreFile.Each(lines, line => SymptomLine.Of(line, matcher)))
            : new MatchSheet(ScoreFile.Each(lines, line => MatchLine.Of(line, matcher, plain)));

    private static async Task<int> RunAsync(string? folder, Streams streams, CancellationToken cancel)
    {
        int opened = OpenedContent.Open(folder, streams, out var live);
        if (live is null) return opened;
        using (live)
        {
            var library = live.Current.Library!;
            var matcher = Matcher.For(library);
            return await JsonLines.RunAsync(streams, request => Answer(request, matcher, library), cancel);
        }
    }

    internal static JsonObject Answer(JsonElement request, Matcher matcher, Library library)
    {
        string text = Request.Text(request, "text");
        var result = matcher.Match(text, Request.OptionalText(request, "series"));
        var asked = Asked(library, result);
        var shown = new JsonObject
        {
            ["decision"] = Words.Kebab((asked is null ? result.Decision : MatchDecision.Clarify).ToString()),
            ["candidates"] = Candidates("fault", result.Candidates),
            ["symptoms"] = Candidates("symptom", result.Symptoms),
            ["codes"] = new JsonArray([.. result.Codes.Select(code => (JsonNode)code)]),
            ["readings"] = ReadingParser.Parse(text, ReadingContext.None) is ReadingResult.Readings readings
                ? ReadCommand.Array(readings.List)
                : new JsonArray(),
        };
        if (!result.Denied.IsEmpty)
            shown["ruledOut"] = new JsonArray(
                [.. result.Denied.Select(denied => (JsonNode)new JsonObject
                {
                    [Words.Kebab(denied.Kind.ToString())] = denied.Id, ["said"] = denied.Said,
                })]);
        if (result.RefusalId is { } refusal) shown["refusal"] = refusal;
        if (asked is not null) shown["question"] = QuestionOf(asked);
        return shown;
    }

    // As the conversation does: where one question tells the symptoms apart sooner than a list, it is asked.
    private static Clarification? Asked(Library library, MatchResult result) =>
        result.IsVague ? Offering.General(library)
        : result.Decision is MatchDecision.Choices or MatchDecision.Clarify && Offering.CertainSymptom(result) is null
            ? Offering.Question(library, result, Offering.Symptoms(library, result))
            : null;

    private static JsonObject QuestionOf(Clarification asked) => new()
    {
        ["id"] = asked.Question.Id,
        ["text"] = asked.Question.Ask.Text,
        ["answers"] = new JsonArray([.. asked.Ways.Select(way => (JsonNode)new JsonObject
        {
            ["text"] = way.Answer.Shown.Text,
            ["symptoms"] = new JsonArray([.. way.Left.Select(symptom => (JsonNode)symptom.Value)]),
        })]),
    };

    private static JsonArray Candidates(string name, IEnumerable<MatchCandidate> candidates) =>
        new([.. candidates.Select(
            c => (JsonNode)new JsonObject { [name] = c.Id, ["score"] = Math.Round(c.Score, 6) })]);
}
