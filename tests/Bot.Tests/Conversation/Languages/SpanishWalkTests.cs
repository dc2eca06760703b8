using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation.Languages;

/// <summary>The ten most common symptoms of the wall unit, walked in Spanish with their likeliest faults.</summary>
public sealed class SpanishWalkTests
{
    private const string Series = "brenholt-ws";
    private const int Likeliest = 2;

    private static readonly string[] Symptoms =
    [
        "poor-cooling", "poor-heating", "water-dripping-indoor", "indoor-fan-not-turning", "communication-code",
        "room-sensor-code", "unit-dead", "icing-indoor-coil", "remote-no-response", "trips-breaker",
    ];

    private static readonly Library Spanish = ShippedContent.Library.Translations["es"];

    public static TheoryData<string, string> Walks
    {
        get
        {
            var walks = new TheoryData<string, string>();
            foreach (string symptom in Symptoms)
                foreach (string role in new[] { "owner", "technician" }) walks.Add(symptom, role);
            return walks;
        }
    }

    [Theory]
    [MemberData(nameof(Walks))]
    public void Walk_AnyFault_IsSpanishThroughout(string symptom, string role)
    {
        foreach (FaultId fault in FaultsOf(symptom).Take(Likeliest))
        {
            Walker walker = Begin(symptom, role);
            HiddenFault unit = HiddenFault.Typical(fault.Value);
            for (int turn = 0; turn < 250 && walker.State.ClosedHow is null; turn++)
            {
                AssertSpanish(walker.Reply, fault);
                if (turn is 1 or 3) walker.Order(CommandWord.Why);
                AssertSpanish(walker.Reply, fault);
                unit.Answer(walker);
            }

            AssertSpanish(walker.Reply, fault);
            Assert.NotNull(walker.State.ClosedHow);
        }
    }

    [Fact]
    public void Page_OfAnotherSeries_FallsBackAndSaysInWhichLanguage()
    {
        Walker walker = Begin("poor-cooling", "technician");
        Passage untold = Spanish.Refusals.Values.SelectMany(page => page.Answer)
            .First(answer => answer.Place.Language is null);
        Segment quoted = new DxAssistant.Conversation.Speaking.Speaker(Spanish.Phrases, Spanish.Language,
            ShippedContent.Library.Language)
            .Quote(SegmentKind.Advice, untold);
        Assert.Equal("en", quoted.Language);
        Assert.Equal("es", walker.State.Language);
    }

    private static IEnumerable<FaultId> FaultsOf(string symptom) =>
        ShippedContent.Library.Graph.Find(new SymptomId(symptom))!.Causes
            .OrderByDescending(cause => cause.Value).ThenBy(cause => cause.Key).Select(cause => cause.Key)
            .Where(fault => ShippedContent.Library.Faults[fault].Series is var series
                && (series.IsEmpty || series.Contains(Series)));

    private static Walker Begin(string symptom, string role)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("español");
        walker.Say(Spanish.Symptoms[new SymptomId(symptom)].Title.Text);
        if (walker.Question.Kind == QuestionKind.Symptom) walker.Tap(symptom);
        walker.Tap(Series);
        walker.Tap(role);
        return walker;
    }

    private static void AssertSpanish(Reply reply, FaultId fault)
    {
        foreach (Segment segment in reply.Segments)
        {
            Assert.True(segment.Language is null, $"{fault}: {segment.Text}");
            Assert.All(segment.From.OfType<Provenance.Page>(),
                page => Assert.True(page.Path.EndsWith(".es.md", StringComparison.Ordinal),
                $"{fault}: {page.Path}: {segment.Text}"));
        }

        IEnumerable<string> shown = reply.Segments.Select(segment => segment.Text)
            .Concat(reply.Question?.Options.Select(option => option.Label) ?? [])
            .Concat(reply.Question?.Fields.SelectMany(field => new[] { field.Label, field.Where }) ?? [])
            .Concat(reply.Belief.Select(line => line.Title));
        Assert.All(shown, text => Assert.DoesNotContain(text, English));
    }

    // What the English pages show and the Spanish ones say in other words.
    private static readonly HashSet<string> English =
    [
        .. ShippedContent.Library.Checks.SelectMany(page => Differ(
            [page.Value.Title, page.Value.Ask, .. page.Value.Outcomes.Select(outcome => outcome.Answer),
                .. page.Value.Readings.Select(field => field.Where)],
            [Spanish.Checks[page.Key].Title, Spanish.Checks[page.Key].Ask,
                .. Spanish.Checks[page.Key].Outcomes.Select(outcome => outcome.Answer),
                .. Spanish.Checks[page.Key].Readings.Select(field => field.Where)])),
        .. ShippedContent.Library.Faults.Values.Select(page => page.Title.Text),
        .. ShippedContent.Library.Repairs.Values.Select(page => page.Title.Text),
        .. ShippedContent.Library.Symptoms.Values.Select(page => page.Title.Text),
    ];

    private static IEnumerable<string> Differ(IEnumerable<Passage> main, IEnumerable<Passage> said) =>
        main.Zip(said).Where(pair => pair.First.Text != pair.Second.Text).Select(pair => pair.First.Text)
            .Where(text => text != "Normal");
}
